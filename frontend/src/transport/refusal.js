/**
 * An answer that is not a result.
 *
 * `message` is a sentence for the reader; `field`, `value` and `allowed` say
 * what to change, and are undefined when no field is at fault.
 */
export class Refusal extends Error {
  /** @param {{detail: string, field?: string, value?: any, allowed?: any}} problem */
  constructor({detail, field, value, allowed}) {
    super(detail);
    this.name = 'Refusal';
    this.field = field;
    this.value = value;
    this.allowed = allowed;
  }
}
