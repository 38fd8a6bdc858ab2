package org.relegend.viewer.ui;

import java.awt.Component;
import java.awt.IllegalComponentStateException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.accessibility.AccessibleState;
import javax.accessibility.AccessibleStateSet;
import org.jspecify.annotations.Nullable;
import org.relegend.map.Box;
import org.relegend.viewer.paint.Mark;
import org.relegend.viewer.paint.MarkOverlay;
import org.relegend.viewer.view.ViewState;

/** The marks in view, for those who have the screen read to them. */
final class CanvasAccessibility {
  /** Beyond that a reader would not be told anything useful. */
  private static final int MOST = 500;

  private CanvasAccessibility() {}

  /** The marks seen in a view, those that stand out first. */
  static List<Accessible> children(
      PictureCanvas canvas, ViewState view, List<MarkOverlay> overlays) {
    Box seen = view.visible();
    List<Mark> marks = new ArrayList<>();
    overlays.forEach(overlay -> marks.addAll(overlay.in(seen)));
    List<Accessible> children = new ArrayList<>();
    for (int i = marks.size() - 1; i >= 0 && children.size() < MOST; i--) {
      children.add(new MarkContext(canvas, marks.get(i), children.size()).asAccessible());
    }
    return List.copyOf(children);
  }

  /** One mark: what it is, how it is known and why it stands out. */
  private static final class MarkContext extends AccessibleContext {
    private final int index;

    MarkContext(PictureCanvas canvas, Mark mark, int index) {
      this.index = index;
      setAccessibleParent(canvas);
      setAccessibleName(mark.subject().toString());
      String why = mark.emphasis() == Mark.Emphasis.PLAIN ? "" : ", " + word(mark);
      setAccessibleDescription(mark.evidence().word() + why);
    }

    private static String word(Mark mark) {
      return mark.emphasis().name().toLowerCase(Locale.ROOT);
    }

    Accessible asAccessible() {
      return () -> this;
    }

    @Override
    public AccessibleRole getAccessibleRole() {
      return AccessibleRole.LABEL;
    }

    @Override
    public AccessibleStateSet getAccessibleStateSet() {
      return new AccessibleStateSet(
          new AccessibleState[] {AccessibleState.VISIBLE, AccessibleState.SHOWING});
    }

    @Override
    public int getAccessibleIndexInParent() {
      return index;
    }

    @Override
    public int getAccessibleChildrenCount() {
      return 0;
    }

    @Override
    public @Nullable Accessible getAccessibleChild(int child) {
      return null;
    }

    @Override
    public Locale getLocale() {
      if (getAccessibleParent() instanceof Component parent) {
        return parent.getLocale();
      }
      throw new IllegalComponentStateException("a mark on no picture");
    }
  }
}
