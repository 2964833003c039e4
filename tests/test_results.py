"""The files of what was measured keep it by version."""

import results


def test_results_are_kept_by_version(tmp_path, monkeypatch):
    """A new version stands above the old, whose sections stay; one that is run again takes the old one's place."""
    file = tmp_path / "RESULTS.md"

    def told(version: str, name: str, text: str) -> None:
        monkeypatch.setattr(results, "VERSION", version)
        results.rewrite(file, "What", "make it", ["one", "two"], name, ["a machine"], text)

    told("0.9.0", "two", "## no heading")
    told("0.9.0", "one", "1")
    told("0.10.0", "one", "2")
    told("0.10.0", "one", "3")

    def section(name: str, text: str) -> str:
        return f"### {name}\n\n- a machine\n\n```\n{text}\n```\n"

    assert file.read_text() == (
        "# What\n\nWritten by `make it`, under the version it was run for.\n\n"
        f"## 0.10.0\n\n{section('one', '3')}\n"
        f"## 0.9.0\n\n{section('one', '1')}\n{section('two', '## no heading')}"
    )
