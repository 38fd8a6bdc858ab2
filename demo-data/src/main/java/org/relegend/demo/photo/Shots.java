package org.relegend.demo.photo;

import org.relegend.demo.design.Spot;
import org.relegend.demo.part.Specimens;
import org.relegend.demo.ray.Vec;

/** The four photos of the demo folder, by picture name. */
public final class Shots {
  private static final Vec WARM = new Vec(1.04, 0.99, 0.9);
  private static final Vec COOL = new Vec(0.93, 1.0, 1.1);
  private static final Vec PLAIN = new Vec(1, 1, 1);

  private Shots() {}

  /** The shot of one picture: component, solder, other-component or other-solder. */
  public static Shot of(String picture) {
    return switch (picture) {
      case "component" -> component();
      case "solder" -> solder();
      case "other-component" -> otherComponent();
      case "other-solder" -> otherSolder();
      default -> throw new IllegalArgumentException("the demo has no photo " + picture);
    };
  }

  public static Shot component() {
    return new Shot(
        Specimens.first(),
        Side.COMPONENT,
        new Camera(
            new Vec(133, 112, 455), new Spot(124, 83), 0.9, 6650, 4000, 3000, -0.012, 0.004, 1),
        BoardLook.EPOXY,
        new Lighting(new Vec(-270, -340, 560), 70, 2.05, WARM, 0.42, COOL),
        Finish.GOOD,
        Bench.MAT,
        true,
        101);
  }

  public static Shot solder() {
    return new Shot(
        Specimens.first(),
        Side.SOLDER,
        new Camera(
            new Vec(118, 104, 450), new Spot(126, 80), -0.7, 6600, 4000, 3000, -0.012, 0.004, 1),
        BoardLook.EPOXY,
        new Lighting(new Vec(520, -330, 540), 70, 1.95, WARM, 0.45, COOL),
        Finish.GOOD,
        Bench.MAT,
        true,
        102);
  }

  public static Shot otherComponent() {
    return new Shot(
        Specimens.second(),
        Side.COMPONENT,
        new Camera(
            new Vec(88, 196, 430), new Spot(123, 84), 171, 6050, 4080, 3060, 0.018, -0.006, 1),
        BoardLook.EPOXY,
        new Lighting(new Vec(560, -250, 520), 110, 2.1, PLAIN, 0.5, WARM),
        Finish.GOOD.withGrain(3),
        Bench.WOOD,
        true,
        103);
  }

  public static Shot otherSolder() {
    return new Shot(
        Specimens.second(),
        Side.SOLDER,
        new Camera(
            new Vec(170, 30, 430), new Spot(126, 79), 12, 5950, 4080, 3060, 0.018, -0.006, 1),
        BoardLook.EPOXY,
        new Lighting(new Vec(-330, 400, 520), 110, 2.1, PLAIN, 0.5, WARM),
        Finish.GOOD.withGrain(3),
        Bench.WOOD,
        true,
        104);
  }
}
