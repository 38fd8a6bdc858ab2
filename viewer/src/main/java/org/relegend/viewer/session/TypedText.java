package org.relegend.viewer.session;

import java.util.List;

/** A text at the top of the window that a mode works with. */
public interface TypedText {
  /** The text as it is now. */
  String text();

  /** It was typed, or completed. */
  void type(String typed);

  /** Names that begin as typed, the likeliest first. */
  default List<String> completions(String begun) {
    return List.of();
  }

  /** Takes the text as it stands, with Enter; false where it waits for a click. */
  default boolean enter(String typed) {
    return false;
  }

  /** Whether each key goes there, also after a click; else only where one asks for it. */
  boolean holdsKeyboard();
}
