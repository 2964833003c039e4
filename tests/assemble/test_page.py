"""The assembler of the one-file page: pure functions on text."""

import base64
import hashlib

import pytest

from jointwise.assemble.page import check, expanded, policy, script_text, sizes, source_hash


def test_every_placeholder_is_replaced_as_it_stands():
    """A part with backslashes and dollar signs comes through unchanged."""
    assert expanded("<a>{{one}}</a>{{two}}", {"one": r"\1 $& \n", "two": "{x}"}) == r"<a>\1 $& \n</a>{x}"


@pytest.mark.parametrize("parts", [{}, {"one": "1", "other": "2"}])
def test_parts_and_placeholders_must_match(parts):
    """A missing or a spare part is refused."""
    with pytest.raises(ValueError, match="placeholders"):
        expanded("{{one}}", parts)


def test_a_script_cannot_end_its_own_element():
    """Closing tags and comment openings inside code are broken up, in any letter case."""
    text = script_text("a='</script>';b='</SCRIPT >';c='<!--'")

    assert "</script" not in text.lower()
    assert "<!--" not in text


def test_the_hash_is_the_policy_standard_s():
    """The source expression is the base64 of the SHA-256 of the text's UTF-8 bytes."""
    digest = base64.b64encode(hashlib.sha256("alert('µ')".encode()).digest()).decode()

    assert source_hash("alert('µ')") == f"'sha256-{digest}'"


def test_the_policy_allows_no_request():
    """Nothing but the named scripts, a blob worker and inline styles is allowed."""
    rules = dict(rule.split(" ", 1) for rule in policy(["one", "two"]).split("; "))

    assert rules["default-src"] == "'none'"
    assert rules["script-src"] == f"{source_hash('one')} {source_hash('two')} 'wasm-unsafe-eval'"
    assert "connect-src" not in rules
    assert (rules["base-uri"], rules["form-action"]) == ("'none'", "'none'")
    assert rules["require-trusted-types-for"] == "'script'"
    assert rules["trusted-types"] == "lit-html jointwise-script jointwise-formula"
    assert "'unsafe-eval'" not in str(rules).replace("'wasm-unsafe-eval'", "")


@pytest.mark.parametrize(
    "page",
    [
        "<img src=https://somewhere.example/a.png>",
        "<link href='//somewhere.example/a.css'>",
        "<style>a{background:url(http://somewhere.example/a)}</style>",
        "<p>{{left}}</p>",
    ],
)
def test_a_page_that_reaches_out_is_refused(page):
    """An outside address or an unexpanded placeholder stops the build."""
    with pytest.raises(ValueError, match="page"):
        check(page)


def test_names_of_vocabularies_are_no_requests():
    """A namespace is a name, and an address in a sentence is text."""
    check('<math xmlns="http://www.w3.org/1998/Math/MathML"></math><p>see https://somewhere.example/</p>')


def test_sizes_are_listed_largest_first():
    """Every part is counted in bytes, with the sum last."""
    assert sizes({"small": "é", "large": "aaaa"}).split() == ["4", "large", "2", "small", "6", "in", "all"]
