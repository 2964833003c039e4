/**
 * Lit elements whose properties are declared once, for Lit and for the type checker:
 * `element({current: {type: Number}})` is the base of a class. `value(of)` declares what is handed down and `state(of)`
 * what is the element's own, with a remark before `of` that says its type.
 */
import {LitElement} from 'lit';

/** @typedef {import('lit').PropertyDeclaration<any, any>} Declaration */
/** @template T @typedef {Declaration & {readonly of?: () => T}} Typed - a declaration of a property of type T */
/**
 * The property's type, as its declaration says it.
 *
 * @template D
 * @typedef {D extends {readonly of?: () => infer T} ? (unknown extends T ? Plain<D> : T) : Plain<D>} Value
 */
/**
 * @template D
 * @typedef {D extends {type: NumberConstructor} ? number : D extends {type: BooleanConstructor} ? boolean
 *   : D extends {type: StringConstructor} ? string : any} Plain
 */
/** @template {Record<string, Declaration>} D @typedef {{[K in keyof D]: Value<D[K]>}} Values */
/** @typedef {abstract new (...given: any[]) => LitElement} Base */

/** Stands for a value of whatever type the remark before it says. */
export const of = /** @type {any} */ (undefined);

/**
 * A property that is handed down as a value, not as an attribute.
 *
 * @template T
 * @param {T} _type
 * @returns {Typed<T>}
 */
export const value = (_type) => ({attribute: false});

/**
 * A property of the element's own.
 *
 * @template T
 * @param {T} _type
 * @returns {Typed<T>}
 */
export const state = (_type) => ({state: true});

/**
 * The base of an element with these properties, and those of another base.
 *
 * @template {Record<string, Declaration>} D
 * @template {Base} [B=typeof LitElement]
 * @param {D} properties
 * @param {B} [base]
 * @returns {Omit<B, 'prototype'> & (new () => InstanceType<B> & Values<D>)}
 */
export const element = (properties, base) =>
  /** @type {any} */ (
    class extends /** @type {any} */ (base ?? LitElement) {
      static properties = properties;
    }
  );
