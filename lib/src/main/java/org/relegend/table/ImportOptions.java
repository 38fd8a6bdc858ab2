package org.relegend.table;

import java.time.Instant;
import org.relegend.circuit.Kinds;
import org.relegend.map.Attestation;
import org.relegend.map.Evidence;

/**
 * How tables are taken into a map.
 *
 * @param author who stands for what the tables say; may be empty
 * @param at when
 * @param replace whether the table wins where it says something other than the map; else that is a
 *     problem that names both
 * @param kinds what is known of the kinds of part
 */
public record ImportOptions(String author, Instant at, boolean replace, Kinds kinds) {
  /**
   * What a joined pin rests on where the table doesn't say: tables are mostly read off drawings.
   */
  public static final Evidence OF_PINS = Evidence.INFERRED;

  /** What a placement rests on where the table doesn't say: the least that can be claimed. */
  public static final Evidence OF_PLACEMENTS = Evidence.GUESSED;

  /**
   * Options that attestations can be made with.
   *
   * @throws IllegalArgumentException where the author can be no name
   */
  public ImportOptions {
    Attestation fits = new Attestation(OF_PINS, author, at);
    at = fits.at();
  }

  public ImportOptions(String author, Instant at, boolean replace) {
    this(author, at, replace, Kinds.standard());
  }

  Attestation attestation(Evidence evidence) {
    return new Attestation(evidence, author, at);
  }
}
