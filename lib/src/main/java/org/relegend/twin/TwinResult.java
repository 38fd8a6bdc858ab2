package org.relegend.twin;

import java.util.List;
import java.util.Optional;
import org.relegend.map.Subject;

/**
 * What follows from some seeds.
 *
 * @param pairs parts, sections and nets; where a group leaves the choice open, one way of choosing,
 *     marked {@link TwinBasis#ONE_OF_SEVERAL}
 * @param pins of paired parts and sections
 * @param common nets that both channels use, as supplies
 */
public record TwinResult(
    List<ProposedTwin> pairs,
    List<ProposedTwin> pins,
    List<TwinGroup> groups,
    List<TwinDifference> differences,
    List<SeedContradiction> contradictions,
    List<Subject> common) {
  public static final TwinResult NONE =
      new TwinResult(List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

  public TwinResult {
    pairs = List.copyOf(pairs);
    pins = List.copyOf(pins);
    groups = List.copyOf(groups);
    differences = List.copyOf(differences);
    contradictions = List.copyOf(contradictions);
    common = List.copyOf(common);
  }

  /** The pair that a part, section, net or pin is in. */
  public Optional<ProposedTwin> of(Subject subject) {
    return (subject instanceof Subject.OfPin ? pins : pairs)
        .stream().filter(pair -> pair.a().equals(subject) || pair.b().equals(subject)).findFirst();
  }
}
