package org.relegend.share;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.relegend.map.Attestation;
import org.relegend.map.BoardMap;
import org.relegend.map.Evidence;
import org.relegend.map.Net;
import org.relegend.map.PictureId;
import org.relegend.map.Placement;
import org.relegend.map.Subject;

/**
 * One thing that a map says and somebody stands for: where something is on a picture, or which node
 * a pin is on.
 *
 * @param about what it speaks of
 * @param picture where it is placed; none where it is on a node
 * @param says in one line: "C102.- on component" or "C102.- at A_ATT"
 * @param by all who stand for it
 */
public record Statement(
    Subject about, Optional<PictureId> picture, String says, List<Attestation> by) {
  public Statement {
    by = List.copyOf(by);
  }

  /** All that a map says, places first, in the order of the map. */
  public static List<Statement> of(BoardMap map) {
    List<Statement> all = new ArrayList<>();
    for (Placement placement : map.placements()) {
      all.add(
          new Statement(
              placement.subject(),
              Optional.of(placement.picture()),
              map.nameOf(placement.subject()) + " on " + placement.picture(),
              placement.evidence()));
    }
    for (Net net : map.nets()) {
      String node = " at " + map.nameOf(Subject.of(net.id()));
      for (Net.Member member : net.members()) {
        Subject pin = Subject.of(member.pin());
        all.add(new Statement(pin, Optional.empty(), map.nameOf(pin) + node, member.evidence()));
      }
    }
    return all;
  }

  /** The best evidence there is for it; none where nobody stands for it. */
  public Optional<Evidence> best() {
    return Attestation.best(by);
  }

  /** When it was last said or confirmed. */
  public Optional<Instant> last() {
    return by.stream().map(Attestation::at).max(Instant::compareTo);
  }

  /** Whether somebody stands for it who fits. */
  public boolean fits(TrustReport.Filter filter) {
    return by.stream().anyMatch(filter::takes);
  }
}
