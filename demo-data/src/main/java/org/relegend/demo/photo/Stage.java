package org.relegend.demo.photo;

import java.util.ArrayList;
import java.util.List;
import org.relegend.demo.design.Design;
import org.relegend.demo.part.Specimen;
import org.relegend.demo.ray.Scene;
import org.relegend.demo.ray.Solid;

/** All that stands before the camera, worked out once a shot. Immutable, free for many threads. */
final class Stage {
  /** Thickness of the laminate, millimetres. */
  static final double THICK = 1.6;

  final Shot shot;
  final Scene scene;
  final Sheet face;
  final Shadow shadow;
  final double width;
  final double height;

  /** How far the bench lies below the face. */
  final double depth;

  Stage(Shot shot) {
    this.shot = shot;
    Specimen specimen = shot.specimen();
    Design design = specimen.design();
    width = design.width();
    height = design.height();
    double scale = Math.min(17, 1.08 * shot.camera().focal() / shot.camera().eye().z());
    List<Solid> solids = new ArrayList<>();
    if (shot.side() == Side.COMPONENT) {
      face = new ComponentFace(specimen, shot.look(), scale).draw();
      solids.addAll(specimen.solids());
      depth = 7;
    } else {
      face = new SolderFace(specimen, shot.look(), scale).draw();
      solids.addAll(new Underside(specimen).solids());
      depth = 36;
    }
    scene = new Scene(width, height, shot.boardThere() ? solids : List.of());
    shadow = new Shadow(scene, width, height, Math.max(1.5, scale / 5), shot.light(), shot.seed());
  }

  boolean onBoard(double x, double y) {
    return shot.boardThere() && x >= 0 && y >= 0 && x < width && y < height;
  }
}
