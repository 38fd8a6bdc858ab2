package org.relegend.demo.photo;

import org.relegend.demo.design.Spot;
import org.relegend.demo.draw.Noise;

/**
 * One soldered joint in relief: a cone of solder drawn up the lead, the cut lead in its middle,
 * flux round it. Fresh ones are fuller, brighter and sit in more flux.
 */
final class Joint {
  private final Sheet sheet;
  private final Spot at;
  private final double radius;
  private final boolean fresh;
  private final long own;

  Joint(Sheet sheet, Spot at, double radius, boolean fresh, long own) {
    this.sheet = sheet;
    this.at = at;
    this.radius = radius;
    this.fresh = fresh;
    this.own = own;
  }

  void draw() {
    double reach = radius * (fresh ? 2.4 : 1.6);
    int left = Math.max(0, (int) ((at.x() - reach) * sheet.scale));
    int right = Math.min(sheet.width - 1, (int) ((at.x() + reach) * sheet.scale));
    int top = Math.max(0, (int) ((at.y() - reach) * sheet.scale));
    int bottom = Math.min(sheet.height - 1, (int) ((at.y() + reach) * sheet.scale));
    for (int row = top; row <= bottom; row++) {
      for (int column = left; column <= right; column++) {
        point(column, row);
      }
    }
  }

  private void point(int column, int row) {
    double x = (column + 0.5) / sheet.scale - at.x();
    double y = (row + 0.5) / sheet.scale - at.y();
    double leanX = 0.22 * radius * (Noise.at(own, 1, 0) - 0.5);
    double leanY = 0.22 * radius * (Noise.at(own, 2, 0) - 0.5);
    double out = Math.sqrt((x - leanX) * (x - leanX) + (y - leanY) * (y - leanY)) / radius;
    double ragged = 0.16 * (Noise.smooth(own, x * 1.3, y * 1.3) - 0.5);
    double edge = Math.sqrt(x * x + y * y) / radius + ragged;
    int n = row * sheet.width + column;
    if (edge < 1.02) {
      solder(n, out, Math.min(1, (1.02 - edge) * 6), x, y);
    } else {
      flux(n, edge);
    }
  }

  private void solder(int n, double out, double cover, double x, double y) {
    double full = (fresh ? 1.1 : 0.8) + 0.35 * Noise.at(own, 3, 0);
    double cone = full * Math.max(0, 1 - out) / (0.42 + 1.7 * out);
    double ripple = 0.05 * Noise.smooth(own + 5, x * 3, y * 3);
    double height = 0.1 + radius * cone * 0.62 + ripple;
    double lead = 0.3 + 0.05 * Noise.at(own, 4, 0);
    double fromLead = out * radius;
    double light = fresh ? 0.66 : 0.42 + 0.16 * Noise.at(own, 5, 0);
    if (fromLead < lead) {
      height = Math.max(height, 0.1 + radius * full * 0.9);
      light *= 0.85;
    }
    sheet.relief[n] = (float) Math.max(sheet.relief[n], cover * height);
    double rough = fresh ? 0.2 : 0.3 + 0.2 * Noise.at(own, 6, 0);
    for (int k = 0; k < 3; k++) {
      int c = 3 * n + k;
      double tone = light * (k == 2 ? 0.97 : 1);
      sheet.colour[c] += (float) (cover * (tone - sheet.colour[c]));
    }
    sheet.roughness[n] += (float) (cover * (rough - sheet.roughness[n]));
    sheet.metal[n] = (float) Math.max(sheet.metal[n], cover);
  }

  private void flux(int n, double edge) {
    double reach = fresh ? 1.3 : 0.5;
    double film = (fresh ? 0.75 : 0.4) * Math.max(0, 1 - (edge - 1.02) / reach);
    film *= 0.4 + Noise.at(own, 8, 0);
    film = Math.min(0.8, film) * (1 - 0.7 * sheet.metal[n]);
    sheet.colour[3 * n] *= (float) (1 - 0.25 * film);
    sheet.colour[3 * n + 1] *= (float) (1 - 0.5 * film);
    sheet.colour[3 * n + 2] *= (float) (1 - 0.85 * film);
    sheet.roughness[n] *= (float) (1 - 0.5 * film);
  }
}
