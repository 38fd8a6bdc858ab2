package org.relegend.viewer.control;

import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import org.relegend.map.PictureId;
import org.relegend.map.Point;
import org.relegend.viewer.paint.Overlay;
import org.relegend.viewer.session.Change;
import org.relegend.viewer.session.Question;

/** How one mode shows itself in a window; one for each open map. */
public interface ModeView extends QuestionForm {
  /** What is half done on a picture, painted over its marks while the mode is current. */
  default List<Overlay> overlays(PictureId picture, Optional<Point> pointer) {
    return List.of();
  }

  /** Whether that changes with each move of the pointer. */
  default boolean followsPointer(PictureId picture) {
    return false;
  }

  /** What a drag that begins there moves; none where it is for others. */
  default Optional<ModeDrag> drag(PictureId picture, PointerPosition at) {
    return Optional.empty();
  }

  @Override
  default boolean ask(Question question, QuestionBar bar) {
    return false;
  }

  /** What lies below the pictures while the mode is current, by its own name. */
  default Optional<JComponent> panel() {
    return Optional.empty();
  }

  /** Whether loupes are on while the mode is current. */
  default boolean hasLoupe() {
    return false;
  }

  /** Whether it has a button, or else is seldom wanted: in the menu, by its key. */
  default boolean hasButton() {
    return true;
  }

  /** Key of what the field at the top hints at. */
  default String hint() {
    return "find.hint";
  }

  /** Something of the session changed. */
  default void follow(Change change) {}
}
