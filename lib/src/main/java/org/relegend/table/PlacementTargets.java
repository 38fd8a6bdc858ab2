package org.relegend.table;

import java.util.Optional;
import org.relegend.map.NameRules;
import org.relegend.map.Part;
import org.relegend.map.Subject;

/**
 * Reads what a placement is of: R101, R101.1, U101/Ta, a net's name, or net:NAME where a part is
 * called the same.
 */
final class PlacementTargets {
  private static final String NET = "net:";

  private final MapDraft draft;
  private final PartCompletion completion;

  PlacementTargets(MapDraft draft, PartCompletion completion) {
    this.draft = draft;
    this.completion = completion;
  }

  Subject subject(String text) {
    if (text.startsWith(NET)) {
      return net(text.substring(NET.length())).orElseThrow(() -> unknown(text));
    }
    Optional<Subject> ofPart = ofPart(text);
    Optional<Subject> net = net(text);
    if (ofPart.isPresent() && net.isPresent()) {
      throw new IllegalArgumentException(
          "\"%s\" names a part and a net: write %s%s for the net".formatted(text, NET, text));
    }
    return ofPart.or(() -> net).orElseThrow(() -> unknown(text));
  }

  private Optional<Subject> net(String name) {
    return draft.findNet(name).map(net -> Subject.of(net.id()));
  }

  private Optional<Subject> ofPart(String text) {
    int slash = text.indexOf('/');
    int dot = text.indexOf('.');
    int end = slash < 0 ? dot : dot < 0 ? slash : Math.min(slash, dot);
    String rest = end < 0 ? "" : text.substring(end + 1);
    return part(end < 0 ? text : text.substring(0, end))
        .flatMap(
            part -> end < 0 ? Optional.of(Subject.of(part.id())) : within(part, text, end, rest));
  }

  /** Also pins and sections that no table lists but the kind tells. */
  private Optional<Subject> within(PartDraft draft, String text, int end, String rest) {
    Part part = completion.complete(draft.finished(), draft.pinsBefore());
    return text.charAt(end) == '/'
        ? part.section(rest).map(section -> new Subject.OfSection(part.id(), section.name()))
        : part.pin(rest).map(pin -> Subject.of(part.ref(pin)));
  }

  private Optional<PartDraft> part(String text) {
    try {
      return draft.find(PartName.parse(text));
    } catch (IllegalArgumentException noPartName) {
      return Optional.empty();
    }
  }

  private static IllegalArgumentException unknown(String text) {
    return new IllegalArgumentException(
        "neither the map nor the tables have \"%s\": expected a part (R101), a pin (R101.1), a"
                .formatted(NameRules.printable(text))
            + " section (U101/X) or a net (net:VP)");
  }
}
