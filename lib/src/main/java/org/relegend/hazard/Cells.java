package org.relegend.hazard;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.relegend.map.Part;

/** The batteries of a circuit, and what their makes do that no bleeder ends. */
record Cells(CautiousTraversal walk) {
  /** What a battery is made of, as far as its value, kind or note says. */
  private enum Chemistry {
    LEAD_ACID("lead-acid", "(?i).*\\b(lead|sla|vrla|pb|agm|gel)\\b.*"),
    LITHIUM(
        "lithium",
        "(?i).*(lithium|\\bli\\b|li-?ion|li-?po|lifepo4|\\b(cr|br|ls)\\d{3,5}\\b|18650).*"),
    OTHER("", "");

    private final String words;
    private final Pattern pattern;

    Chemistry(String words, String pattern) {
      this.words = words;
      this.pattern = Pattern.compile(pattern);
    }
  }

  private static final Map<Chemistry, String> CAUTIONS =
      Map.of(
          Chemistry.LEAD_ACID,
          "stays live with the plug out; a short of it gives hundreds of amperes. Disconnect it at"
              + " its terminals, the earthed one first; never put a discharge resistor across it.",
          Chemistry.LITHIUM,
          "stays live with the plug out; shorted, charged or heated it can burn or burst. Disconnect"
              + " it, and never charge a cell that isn't made for it.",
          Chemistry.OTHER,
          "stays live with the plug out: disconnect it before you work.");

  List<Battery> find() {
    return walk.circuit().map().parts().stream()
        .filter(part -> BatteryStacks.isBattery(walk, part))
        .map(Cells::battery)
        .toList();
  }

  private static Battery battery(Part part) {
    String text = (part.value() + " " + part.kind() + " " + part.note()).toLowerCase(Locale.ROOT);
    Chemistry chemistry = Chemistry.OTHER;
    for (Chemistry one : List.of(Chemistry.LEAD_ACID, Chemistry.LITHIUM)) {
      chemistry = one.pattern.matcher(text.replace('\n', ' ')).matches() ? one : chemistry;
    }
    return new Battery(part.id(), chemistry.words, CAUTIONS.getOrDefault(chemistry, ""));
  }
}
