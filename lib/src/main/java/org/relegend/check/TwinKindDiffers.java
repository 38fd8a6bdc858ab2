package org.relegend.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.relegend.circuit.Kind;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.MapTables;
import org.relegend.map.Part;
import org.relegend.map.Subject;
import org.relegend.map.TwinPair;

/** Twins that are parts of differing kinds: one of the pair is wrong, or one of the kinds. */
final class TwinKindDiffers implements Check {
  @Override
  public String code() {
    return "twin-kind-differs";
  }

  @Override
  public List<Finding> inspect(CheckContext context) {
    List<Finding> findings = new ArrayList<>();
    for (TwinPair twins : context.map().twins()) {
      Optional<Part> a = part(context, twins.a());
      Optional<Part> b = part(context, twins.b());
      if (a.isPresent() && b.isPresent() && differ(context, a.get(), b.get())) {
        findings.add(finding(twins, a.get(), b.get()));
      }
    }
    return findings;
  }

  private static Optional<Part> part(CheckContext context, Subject subject) {
    return subject instanceof Subject.OfPart s ? context.map().part(s.part()) : Optional.empty();
  }

  /** A kind that isn't known yet differs from nothing; two words for one kind don't differ. */
  private static boolean differ(CheckContext context, Part a, Part b) {
    if (a.kind().isEmpty() || b.kind().isEmpty() || a.kind().equalsIgnoreCase(b.kind())) {
      return false;
    }
    Optional<Kind> first = context.kind(a);
    return first.isEmpty() || !first.equals(context.kind(b));
  }

  private Finding finding(TwinPair twins, Part a, Part b) {
    return new Finding(
            code(),
            Severity.WARNING,
            List.of(twins.a(), twins.b()),
            "The twins %s and %s differ in kind: %s is a %s, %s is a %s"
                .formatted(
                    a.designator(),
                    b.designator(),
                    a.designator(),
                    a.kind(),
                    b.designator(),
                    b.kind()),
            "Correct the kind that is wrong; if both are right, they are no twins.")
        .fixedBy(MapTables.TWINS.remove(twins.key()));
  }
}
