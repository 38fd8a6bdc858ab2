package org.relegend.demo.photo;

import java.util.List;
import java.util.stream.IntStream;
import org.relegend.demo.design.Design;
import org.relegend.demo.design.Hole;
import org.relegend.demo.design.Link;
import org.relegend.demo.design.Pads;
import org.relegend.demo.design.PlacedPin;
import org.relegend.demo.design.Spot;
import org.relegend.demo.draw.Mask;
import org.relegend.demo.draw.Noise;
import org.relegend.demo.part.Specimen;
import org.relegend.demo.ray.Paint;

/** Draws the solder side, as seen from there: tracks, joints, flux, the board's own number. */
final class SolderFace {
  private static final Spot NUMBER = new Spot(72, 151.5);
  private static final Paint OLD_TIN = Paint.of(0xA9AAA3, 0.4);
  private static final Paint COPPER = Paint.of(0xB36B3C, 0.38);

  private final Specimen specimen;
  private final Design design;
  private final BoardLook look;
  private final double scale;
  private final long seed;

  SolderFace(Specimen specimen, BoardLook look, double scale) {
    this.specimen = specimen;
    this.design = specimen.design();
    this.look = look;
    this.scale = scale;
    seed = specimen.seed() + 1000;
  }

  Sheet draw() {
    Sheet sheet = new Sheet(design.width(), design.height(), scale, true);
    Mask copper = Copper.mask(specimen, Side.SOLDER, scale);
    Copper.number(copper, design.number(), NUMBER, 3);
    Mask torn = torn();
    float[] soft = Blur.of(copper, 0.09 * scale);
    Laminate laminate = new Laminate(look, seed);
    IntStream.range(0, sheet.height)
        .parallel()
        .forEach(
            row -> {
              for (int column = 0; column < sheet.width; column++) {
                ground(sheet, laminate, copper, torn, soft, column, row);
              }
            });
    for (PlacedPin pin : design.pins()) {
      boolean fresh = specimen.fitted(design.part(pin.part())).fresh();
      Spot at = Copper.seen(pin.at(), Side.SOLDER, design);
      new Joint(
              sheet,
              at,
              Pads.radius(design, pin),
              fresh,
              (long) (1e9 * Noise.of(seed, pin.name(), 0)))
          .draw();
    }
    for (Link link : specimen.artwork().links()) {
      for (Spot end : List.of(link.from(), link.to())) {
        Spot at = Copper.seen(end, Side.SOLDER, design);
        long own =
            (long) (1e9 * Noise.at(seed, Math.round(end.x() * 1000), Math.round(end.y() * 1000)));
        new Joint(sheet, at, Copper.LINK_PAD, false, own).draw();
      }
    }
    holes(sheet);
    return sheet;
  }

  private void ground(
      Sheet sheet, Laminate laminate, Mask copper, Mask torn, float[] soft, int column, int row) {
    double x = (column + 0.5) / scale;
    double y = (row + 0.5) / scale;
    int at = row * sheet.width + column;
    double lost = torn.pixel(column, row) / 255.0;
    double cover = copper.pixel(column, row) / 255.0 * (1 - lost);
    double shade = (1 - 0.12 * soft[at]) * (1 - 0.25 * lost);
    laminate.colour(x, y, shade, sheet.colour, 3 * at);
    sheet.roughness[at] = 0.4f;
    switch (look.finish()) {
      case TINNED -> metal(sheet, at, cover, OLD_TIN, x, y);
      case BARE -> metal(sheet, at, cover, COPPER, x, y);
      case RESIST -> resist(sheet, at, soft[at]);
    }
    double wave = look.finish() == BoardLook.TrackFinish.TINNED ? 0.11 : 0.015;
    double swell = Noise.cloud(seed + 4, x * 0.9, y * 0.9, 2);
    double crown = soft[at] * soft[at];
    sheet.relief[at] = (float) (crown * (0.05 + wave * swell) * (1 - lost));
    double amber = Math.max(0, Noise.cloud(seed + 9, x / 5, y / 5, 4) - 0.58) * 1.5;
    tint(sheet, at, Math.min(0.2, amber) * (1 - 0.6 * cover));
  }

  private void metal(Sheet sheet, int at, double cover, Paint paint, double x, double y) {
    double dull = Noise.cloud(seed + 6, x / 6, y / 6, 4);
    double light = 0.7 + 0.5 * dull;
    mix(sheet, at, cover, paint, light);
    sheet.roughness[at] += (float) (cover * (0.24 + 0.3 * dull - sheet.roughness[at]));
    sheet.metal[at] = (float) cover;
  }

  private void resist(Sheet sheet, int at, double cover) {
    Paint paint = Paint.of(look.resist(), 0.3);
    mix(sheet, at, 0.88, paint, 0.75 + 0.75 * cover);
    sheet.roughness[at] = 0.22f;
  }

  private static void mix(Sheet sheet, int at, double cover, Paint paint, double light) {
    int n = 3 * at;
    sheet.colour[n] += (float) (cover * (paint.red() * light - sheet.colour[n]));
    sheet.colour[n + 1] += (float) (cover * (paint.green() * light - sheet.colour[n + 1]));
    sheet.colour[n + 2] += (float) (cover * (paint.blue() * light - sheet.colour[n + 2]));
  }

  /** A film of flux: yellow, glossy. */
  private static void tint(Sheet sheet, int at, double film) {
    sheet.colour[3 * at] *= (float) (1 - 0.2 * film);
    sheet.colour[3 * at + 1] *= (float) (1 - 0.42 * film);
    sheet.colour[3 * at + 2] *= (float) (1 - 0.85 * film);
    sheet.roughness[at] *= (float) (1 - 0.45 * film);
  }

  /** Copper that came off the board where a repair wire now carries the net. */
  private Mask torn() {
    Mask mask = new Mask(design.width(), design.height(), scale);
    for (Link repair : specimen.repairs()) {
      Spot at = Copper.seen(repair.from(), Side.SOLDER, design);
      for (int k = 0; k < 6; k++) {
        double dx = 2.4 * (Noise.at(seed, k, 1) - 0.5);
        double dy = 1.1 * (Noise.at(seed, k, 2) - 0.5);
        mask.disc(at.x() + dx, at.y() + dy, 0.75);
      }
    }
    return mask;
  }

  private void holes(Sheet sheet) {
    Mask deep = new Mask(design.width(), design.height(), scale);
    for (Hole hole : design.holes()) {
      Spot at = Copper.seen(hole.at(), Side.SOLDER, design);
      deep.disc(at.x(), at.y(), hole.diameter() / 2);
    }
    for (int row = 0; row < sheet.height; row++) {
      for (int column = 0; column < sheet.width; column++) {
        if (deep.pixel(column, row) > 0) {
          int at = row * sheet.width + column;
          mix(sheet, at, deep.pixel(column, row) / 255.0, Paint.of(0x202022, 1), 1);
          sheet.roughness[at] = 0.9f;
        }
      }
    }
  }
}
