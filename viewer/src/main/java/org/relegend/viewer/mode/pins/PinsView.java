package org.relegend.viewer.mode.pins;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.relegend.lineup.PackageOutline;
import org.relegend.map.PictureId;
import org.relegend.map.Point;
import org.relegend.viewer.control.ModeContext;
import org.relegend.viewer.control.ModeView;
import org.relegend.viewer.paint.Overlay;
import org.relegend.viewer.paint.PredictedPlaceOverlay;

/** The package as it would lie, between its first pin and the pointer. */
public final class PinsView implements ModeView {
  private final PinsTool tool;

  public PinsView(PinsTool tool, ModeContext context) {
    this.tool = tool;
  }

  @Override
  public String hint() {
    return "find.pins.hint";
  }

  @Override
  public boolean followsPointer(PictureId picture) {
    return tool.first(picture).isPresent();
  }

  @Override
  public List<Overlay> overlays(PictureId picture, Optional<Point> pointer) {
    List<PredictedPlaceOverlay.Predicted> ghosts = new ArrayList<>();
    tool.first(picture)
        .ifPresent(
            first -> ghosts.add(new PredictedPlaceOverlay.Predicted(first, 0, List.of(), "1")));
    pointer
        .flatMap(at -> tool.preview(picture, at))
        .ifPresent(outline -> addPackage(outline, ghosts));
    return ghosts.isEmpty() ? List.of() : List.of(new PredictedPlaceOverlay(ghosts));
  }

  private static void addPackage(
      PackageOutline outline, List<PredictedPlaceOverlay.Predicted> ghosts) {
    for (int i = 0; i < outline.pins().size(); i++) {
      ghosts.add(
          new PredictedPlaceOverlay.Predicted(
              outline.pins().get(i),
              0,
              i == 0 ? outline.body() : List.of(),
              Integer.toString(i + 1)));
    }
  }
}
