package org.relegend.table;

import java.util.List;
import org.relegend.map.Attestation;

/** Keeps a second import of one table from piling up evidence. */
final class ImportAttestations {
  private ImportAttestations() {}

  /** Whether the same person said so before on evidence as good or better, whenever that was. */
  static boolean by(Attestation attestation, List<Attestation> known) {
    return known.stream()
        .anyMatch(
            one ->
                one.author().equals(attestation.author())
                    && one.evidence().compareTo(attestation.evidence()) <= 0);
  }
}
