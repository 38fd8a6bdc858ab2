package org.relegend.viewer.control;

import java.util.List;
import org.relegend.map.Point;
import org.relegend.viewer.paint.Overlay;

/** Something of a mode that is dragged on a picture, in picture units. */
public interface ModeDrag {
  /** What is painted while it is there. */
  List<Overlay> preview(Point to);

  /** It was let go there. */
  void drop(Point to);
}
