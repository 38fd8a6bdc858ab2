package org.relegend.demo.photo;

import java.util.List;
import java.util.function.UnaryOperator;
import org.relegend.demo.part.Specimens;
import org.relegend.demo.ray.Vec;

/**
 * What makes real photos worse than good ones, each weak and strong, as changes of a shot; and
 * photos that show something else altogether.
 */
public final class Faults {
  /** One fault: its name, how strong, and what it does to a shot. */
  public record Fault(String name, String strength, UnaryOperator<Shot> change) {
    @Override
    public String toString() {
      return name + ", " + strength;
    }
  }

  private Faults() {}

  /** Faults under which the board is still the right one. */
  public static List<Fault> ofGoodBoards() {
    return List.of(
        weak("lens distortion", shot -> shot.with(shot.camera().withLens(-0.06, 0.02))),
        strong("lens distortion", shot -> shot.with(shot.camera().withLens(-0.28, 0.12))),
        weak("parallax", shot -> shot.with(shot.camera().withParallax(1))),
        strong("parallax", shot -> shot.with(shot.camera().withParallax(2.2))),
        weak("blur", shot -> shot.with(shot.finish().withBlur(2.5, 0))),
        strong("blur", shot -> shot.with(shot.finish().withBlur(8, 0))),
        weak("shake", shot -> shot.with(shot.finish().withBlur(0.8, 8))),
        strong("shake", shot -> shot.with(shot.finish().withBlur(0.8, 40))),
        weak("glare", shot -> shot.with(shot.finish().withGlare(0.35, 0.55, 0.4))),
        strong("glare", shot -> shot.with(shot.finish().withGlare(1.4, 0.55, 0.4))),
        weak("dark and noisy", shot -> shot.with(shot.finish().withExposure(0.4).withGrain(5))),
        strong("dark and noisy", shot -> shot.with(shot.finish().withExposure(0.1).withGrain(12))),
        weak("raking light", shot -> shot.with(raking(shot, 260))),
        strong("raking light", shot -> shot.with(raking(shot, 90))),
        weak("another specimen", shot -> shot.with(Specimens.second())),
        strong("another specimen", shot -> shot.with(Specimens.refitted(Specimens.second(), 70))),
        weak("another board colour", shot -> shot.with(BoardLook.GREEN)),
        strong("another board colour", shot -> shot.with(BoardLook.PHENOLIC)));
  }

  /** Another board of the same maker, one a seed, taken like the shot. */
  public static Shot wrongBoard(Shot shot, long seed) {
    return shot.with(Specimens.wrong(seed)).withSeed(seed);
  }

  /** Only the bench, taken like the shot. */
  public static Shot blank(Shot shot) {
    return shot.withoutBoard();
  }

  private static Fault weak(String name, UnaryOperator<Shot> change) {
    return new Fault(name, "weak", change);
  }

  private static Fault strong(String name, UnaryOperator<Shot> change) {
    return new Fault(name, "strong", change);
  }

  /** The lamp sunk to a height in millimetres, its power on the board's middle kept. */
  private static Lighting raking(Shot shot, double height) {
    Lighting light = shot.light();
    Vec lamp = light.lamp();
    double power = light.power() * lamp.z() / height * 0.8;
    return new Lighting(
        new Vec(lamp.x(), lamp.y(), height),
        light.size(),
        power,
        light.lampColour(),
        light.ambient() * 0.6,
        light.ambientColour());
  }
}
