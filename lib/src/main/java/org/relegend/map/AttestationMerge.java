package org.relegend.map;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Putting together what several people say. */
final class AttestationMerge {
  private static final Comparator<Attestation> BY_TIME =
      Comparator.comparing(Attestation::at)
          .thenComparing(Attestation::author)
          .thenComparing(Attestation::evidence)
          .thenComparing(Attestation::note);

  private AttestationMerge() {}

  /** All of both, each once, in order of time. */
  static List<Attestation> union(List<Attestation> a, List<Attestation> b) {
    List<Attestation> all = new ArrayList<>(a);
    b.stream().filter(attestation -> !all.contains(attestation)).forEach(all::add);
    all.sort(BY_TIME);
    return all;
  }
}
