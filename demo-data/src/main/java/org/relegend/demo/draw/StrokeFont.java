package org.relegend.demo.draw;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A lettering of straight strokes, as stencils and plotters gave it: capitals, digits, the small
 * letters that values need. Other small letters become capitals, other characters a gap.
 */
public final class StrokeFont {
  /** Columns 0..4 and rows 0 (cap height) to 6 (base line) to 8; strokes apart by a blank. */
  private static final Map<Character, String> STROKES = strokes();

  private static final double CAP = 6;
  private static final double ADVANCE = 5.6;

  private StrokeFont() {}

  /** How wide a text is, for capitals of height 1. */
  public static double width(String text) {
    return text.isEmpty() ? 0 : (text.length() * ADVANCE - (ADVANCE - 4)) / CAP;
  }

  /**
   * The strokes of a text for capitals of height 1: each a run of (x, y), x from 0 to {@link
   * #width}, y from 0 at cap height to 1 on the base line.
   */
  public static List<List<double[]>> strokes(String text) {
    List<List<double[]>> runs = new ArrayList<>();
    for (int k = 0; k < text.length(); k++) {
      String glyph = glyph(text.charAt(k));
      for (String stroke : glyph.split(" ")) {
        List<double[]> run = new ArrayList<>();
        for (int n = 0; n + 1 < stroke.length(); n += 2) {
          run.add(
              new double[] {
                (stroke.charAt(n) - '0' + k * ADVANCE) / CAP, (stroke.charAt(n + 1) - '0') / CAP
              });
        }
        if (!run.isEmpty()) {
          runs.add(run);
        }
      }
    }
    return runs;
  }

  private static String glyph(char letter) {
    String glyph = STROKES.get(letter);
    if (glyph == null) {
      glyph = STROKES.get(String.valueOf(letter).toUpperCase(Locale.ROOT).charAt(0));
    }
    return glyph == null ? "" : glyph;
  }

  private static Map<Character, String> strokes() {
    String table =
        """
        A 062046 1333
        B 003041423303 334445360600
        C 4130100105163645
        D 00204244260600
        E 40000646 0333
        F 400006 0333
        G 41301001051636454323
        H 0006 4046 0343
        I 2026 1030 1636
        J 4045361605
        K 0006 400346
        L 000646
        M 0600234046
        N 06004640
        O 100105163645413010
        P 06003041423303
        Q 100105163645413010 2446
        R 06003041423303 2346
        S 413010010213334445361605
        T 0040 2026
        U 000516364540
        V 002640
        W 0016223640
        X 0046 4006
        Y 002340 2326
        Z 00400646
        0 100105163645413010
        1 112026 1636
        2 01103041420646
        3 01103041423313 334445361605
        4 36300444
        5 400003334445361605
        6 413010010516364544331304
        7 004016
        8 100102133344453616050413 3342413010
        9 051636454130100102133342
        k 0006 320436
        n 0206 0312223336
        p 0208 0312223335261605
        u 0208 05162635 3236
        m 0206 03122326 23324346
        . 1616
        , 1617
        - 1333
        + 0343 2125
        / 0640
        ~ 03123443
        ( 20111526
        ) 20313526
        : 2222 2525
        = 0242 0444
        """;
    Map<Character, String> strokes = new HashMap<>();
    table.lines().forEach(line -> strokes.put(line.charAt(0), line.substring(2)));
    return strokes;
  }
}
