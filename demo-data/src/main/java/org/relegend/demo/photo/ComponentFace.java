package org.relegend.demo.photo;

import java.util.List;
import java.util.stream.IntStream;
import org.relegend.demo.design.Design;
import org.relegend.demo.design.Hole;
import org.relegend.demo.design.Link;
import org.relegend.demo.design.PlacedPin;
import org.relegend.demo.design.Spot;
import org.relegend.demo.draw.Mask;
import org.relegend.demo.draw.Noise;
import org.relegend.demo.part.Specimen;

/** Draws the board's upper face without its parts: laminate, copper showing through, holes. */
final class ComponentFace {
  private static final double GHOST_BLUR = 0.35;

  private final Specimen specimen;
  private final Design design;
  private final BoardLook look;
  private final double scale;

  ComponentFace(Specimen specimen, BoardLook look, double scale) {
    this.specimen = specimen;
    this.design = specimen.design();
    this.look = look;
    this.scale = scale;
  }

  Sheet draw() {
    Sheet sheet = new Sheet(design.width(), design.height(), scale, false);
    Laminate laminate = new Laminate(look, specimen.seed());
    float[] ghost = Blur.of(Copper.mask(specimen, Side.COMPONENT, scale), GHOST_BLUR * scale);
    Mask drilled = drilled(0.55);
    Mask rims = drilled(0.95);
    float[] flux = Blur.of(flux(), 0.3 * scale);
    IntStream.range(0, sheet.height)
        .parallel()
        .forEach(
            row -> {
              for (int column = 0; column < sheet.width; column++) {
                pixel(sheet, laminate, ghost, drilled, rims, flux, column, row);
              }
            });
    return sheet;
  }

  private void pixel(
      Sheet sheet,
      Laminate laminate,
      float[] ghost,
      Mask drilled,
      Mask rims,
      float[] flux,
      int column,
      int row) {
    double x = (column + 0.5) / scale;
    double y = (row + 0.5) / scale;
    int at = row * sheet.width + column;
    double through = look.seeThrough() * ghost[at];
    double hole = drilled.pixel(column, row) / 255.0;
    double rim = rims.pixel(column, row) / 255.0;
    double wet = flux[at] * (0.4 + 0.9 * Noise.smooth(specimen.seed() + 33, x * 1.5, y * 1.5));
    double heat = heat(x, y);
    double light = (1 - 0.5 * through) * (1 - 0.86 * hole) * (1 - 0.18 * rim) * (1 - 0.68 * heat);
    laminate.colour(x, y, light, sheet.colour, 3 * at);
    sheet.colour[3 * at] *= (float) (1 + 0.06 * through);
    sheet.colour[3 * at + 2] *= (float) (1 - 0.3 * through - 0.35 * heat - 0.3 * wet);
    sheet.colour[3 * at + 1] *= (float) (1 - 0.12 * heat - 0.1 * wet);
    scuffs(sheet, x, y, at);
    double scuff = Noise.smooth(specimen.seed() + 40, x * 0.8 + y * 0.6, y * 6 - x * 8);
    sheet.roughness[at] = (float) (0.42 + (scuff > 0.9 ? 0.15 : 0) - 0.22 * wet);
  }

  /** Dust, fibres and the odd scratch. */
  private void scuffs(Sheet sheet, double x, double y, int at) {
    long seed = specimen.seed() + 60;
    double bits = Noise.smooth(seed, x * 5, y * 5);
    double speck = bits > 0.955 ? 1 + 5 * (bits - 0.955) : bits < 0.035 ? 0.72 : 1;
    double bow = 6 * Noise.smooth(seed + 1, x / 30, y / 30);
    double fibre = Noise.smooth(seed + 2, x * 0.22 + bow, (y + bow) * 5.5);
    double line = fibre > 0.975 ? 1 + 7 * (fibre - 0.975) : 1;
    for (int k = 0; k < 3; k++) {
      sheet.colour[3 * at + k] *= (float) (speck * line);
    }
  }

  private double heat(double x, double y) {
    double heat = 0;
    for (Spot mark : specimen.heatMarks()) {
      double dx = (x - mark.x()) / 8.5;
      double dy = (y - mark.y() - 1.2) / 6.2;
      double ragged = 0.5 * (Noise.cloud(specimen.seed() + 50, x / 1.8, y / 1.8, 3) - 0.5);
      heat = Math.max(heat, 1 - (dx * dx + dy * dy) + ragged);
    }
    return Math.max(0, Math.min(1, heat * 1.3));
  }

  private Mask drilled(double radius) {
    Mask mask = new Mask(design.width(), design.height(), scale);
    for (PlacedPin pin : design.pins()) {
      mask.disc(pin.at().x(), pin.at().y(), radius);
    }
    for (Link link : specimen.artwork().links()) {
      for (Spot end : List.of(link.from(), link.to())) {
        mask.disc(end.x(), end.y(), radius * 0.9);
      }
    }
    for (Hole hole : design.holes()) {
      mask.disc(hole.at().x(), hole.at().y(), hole.diameter() / 2 + (radius - 0.55) * 0.8);
    }
    return mask;
  }

  private Mask flux() {
    Mask mask = new Mask(design.width(), design.height(), scale);
    for (PlacedPin pin : design.pins()) {
      if (specimen.fitted(design.part(pin.part())).fresh()) {
        for (int k = 0; k < 3; k++) {
          double spread = 0.8 + 0.8 * Noise.of(specimen.seed(), pin.name(), 3 * k);
          double dx = 1.2 * Noise.of(specimen.seed(), pin.name(), 3 * k + 1) - 0.6;
          double dy = 1.2 * Noise.of(specimen.seed(), pin.name(), 3 * k + 2) - 0.6;
          mask.disc(pin.at().x() + dx, pin.at().y() + dy, spread);
        }
      }
    }
    return mask;
  }
}
