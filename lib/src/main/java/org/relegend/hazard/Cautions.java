package org.relegend.hazard;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.relegend.map.HazardZone;

/**
 * The usual cautions, from common practice; where practice disagrees they tell both views. They are
 * told at the first opening of a map with mains, before any place in a zone, on printed sheets and
 * by {@code hazards}.
 */
public final class Cautions {
  private static final List<Caution> TEXTS = read();

  private Cautions() {}

  /** All but those of single zones, in the order in which they are told. */
  public static List<Caution> all() {
    return TEXTS.stream().filter(caution -> !caution.key().startsWith("zone-")).toList();
  }

  /** What stands at a zone: its title is the headline. */
  public static Caution of(HazardZone.Kind kind) {
    return of("zone-" + kind.word());
  }

  /**
   * The caution of this key.
   *
   * @throws IllegalArgumentException where there is none
   */
  public static Caution of(String key) {
    return TEXTS.stream()
        .filter(caution -> caution.key().equals(key))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("there is no caution \"" + key + "\""));
  }

  /** Blocks divided by blank lines: a key, a title, and the text over the other lines. */
  private static List<Caution> read() {
    try (InputStream in = Cautions.class.getResourceAsStream("cautions.txt")) {
      if (in == null) {
        throw new IllegalStateException("the program's own cautions.txt is missing");
      }
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      List<Caution> cautions = new ArrayList<>();
      for (String block : text.strip().split("\\R\\s*\\R")) {
        List<String> lines = block.strip().lines().map(String::strip).toList();
        if (lines.size() < 3) {
          throw new IllegalStateException("the program's own cautions.txt is damaged: " + block);
        }
        cautions.add(
            new Caution(
                lines.get(0), lines.get(1), String.join(" ", lines.subList(2, lines.size()))));
      }
      return List.copyOf(cautions);
    } catch (IOException e) {
      throw new IllegalStateException("the program's own cautions.txt can't be read", e);
    }
  }
}
