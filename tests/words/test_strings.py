"""The texts that users read are those of the reviewed list, so that a changed word shows in its diff."""

from reviewed import LIST, listed, python_texts


def test_the_list_holds_every_text() -> None:
    """The list is what the sources say; `python tests/words/reviewed.py` writes it anew."""
    assert listed() == LIST.read_text("utf-8")


def test_of_a_module_the_sentences_are_found() -> None:
    """What is put into a sentence stands as {}, with its own words beside it; what only documents is left out."""
    source = 'def told(db):\n    """Says it."""\n    return f"{db:.1f} dB {\'too much\' if db else \'left\'}"\n'

    assert [text for text in python_texts(source) if text not in ("", ".1f")] == ["{} dB {}", "too much", "left"]
