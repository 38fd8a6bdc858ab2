package org.relegend.bench.suspect;

import java.util.List;
import org.relegend.map.PartId;

/**
 * A part under suspicion.
 *
 * @param score its share of all suspicion, 0 to 1
 * @param reasons in plain words, the weightiest first
 * @param figures read and predicted volts of its most telling nodes; empty where it wasn't solved
 * @param alike parts that no reading so far tells from it
 */
public record Suspect(
    PartId part, double score, List<String> reasons, List<NodeFigure> figures, List<PartId> alike) {
  public Suspect {
    reasons = List.copyOf(reasons);
    figures = List.copyOf(figures);
    alike = List.copyOf(alike);
  }

  /** One that wasn't solved. */
  public Suspect(PartId part, double score, List<String> reasons) {
    this(part, score, reasons, List.of(), List.of());
  }
}
