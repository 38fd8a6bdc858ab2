package org.relegend.viewer.session;

import java.util.Optional;
import org.relegend.map.Subject;

/**
 * One thing that a click on a picture can do, and all that is known of it outside of its own room.
 * Exactly one mode is current in a session; what another had half done is dropped then.
 */
public interface Mode extends Room {
  /** Its name in keys of texts, and of the action that takes it. */
  String word();

  /** What to do next when it was just taken in hand. */
  default Optional<Notice.Kind> prompt() {
    return Optional.empty();
  }

  /** Is taken in hand; false, having said why, where nothing can be done with it now. */
  default boolean begin() {
    return true;
  }

  /** It was asked for, and the pictures it works on are shown. */
  default void taken() {}

  /** The technician clicked on a picture. */
  void click(Target target);

  /** Enter, while a picture has the keyboard or not; false where it is for something else. */
  default boolean enter() {
    return false;
  }

  /** One step back in what is half done; false where nothing is. */
  default boolean back() {
    return false;
  }

  /** Takes away what is chosen in it; false where that is for others to do. */
  default boolean takeAway() {
    return false;
  }

  /** Whether it puts something into the map where it points. */
  default boolean marksPlaces() {
    return false;
  }

  /** Whether it works on two pictures of one kind, which stay side by side. */
  default boolean isOnTwoPictures() {
    return false;
  }

  /** Key of the text that the heading of what is chosen stands in, if not by itself. */
  default Optional<String> heading(Subject chosen) {
    return Optional.empty();
  }

  /** What is typed at the top while it is current, where that isn't to find something. */
  default Optional<TypedText> typedText() {
    return Optional.empty();
  }
}
