package org.relegend.viewer.mode.check;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.relegend.circuit.Circuit;
import org.relegend.finding.Finding;
import org.relegend.hazard.Hazards;
import org.relegend.hazard.UnmarkedHazard;
import org.relegend.hazard.VoltageLimits;
import org.relegend.map.Attestation;
import org.relegend.map.BoardMap;
import org.relegend.map.Edit;
import org.relegend.map.Evidence;
import org.relegend.map.HazardZone;
import org.relegend.map.MapTables;
import org.relegend.viewer.mode.zone.ZoneTool;
import org.relegend.viewer.session.Notice;
import org.relegend.viewer.session.Room;
import org.relegend.viewer.session.Session;

/** The one edit that puts right what a finding is about, where there is one. */
public final class FindingFix implements Room {
  private final Session session;

  public FindingFix(Session session) {
    this.session = session;
  }

  /** Puts right what a finding is about, as one edit that can be undone. */
  public void mend(Finding finding) {
    session.hub().check();
    edit(finding, session.map(), session.hand().attests())
        .ifPresentOrElse(
            session.document()::apply, () -> session.hub().say(Notice.Kind.NOTHING_TO_MEND));
  }

  /** Whether {@link #edit} may have one to offer. */
  public static boolean isOffered(Finding finding) {
    return finding.fix().isPresent() || isOfUnmarkedDanger(finding);
  }

  private static boolean isOfUnmarkedDanger(Finding finding) {
    return finding.code().startsWith("unmarked-") && finding.picture().isPresent();
  }

  /**
   * The finding's own, or a zone around what lies outside of every zone: inferred by the program,
   * so that it is for the technician to draw it better.
   */
  public static Optional<Edit> edit(Finding finding, BoardMap map, Attestation now) {
    if (finding.fix().isPresent() || !isOfUnmarkedDanger(finding)) {
      return finding.fix();
    }
    Circuit circuit = Circuit.of(map);
    Attestation inferred = new Attestation(Evidence.INFERRED, now.author(), now.at());
    Hazards hazards = Hazards.of(circuit, VoltageLimits.INSTRUMENTS);
    Set<HazardZone.Kind> kinds = kinds(finding, hazards);
    return hazards.proposals(circuit).stream()
        .filter(zone -> finding.picture().filter(zone.picture()::equals).isPresent())
        .filter(zone -> kinds.contains(zone.kind()))
        .findFirst()
        .map(
            zone ->
                MapTables.ZONES.put(
                    new HazardZone(
                        ZoneTool.freshId(map, zone.kind()),
                        zone.picture(),
                        zone.kind(),
                        zone.outline(),
                        "",
                        List.of(inferred))));
  }

  /** What threatens at the places that the finding names. */
  private static Set<HazardZone.Kind> kinds(Finding finding, Hazards hazards) {
    return hazards.unmarked().stream()
        .filter(danger -> finding.picture().filter(danger.picture()::equals).isPresent())
        .filter(danger -> finding.subjects().contains(danger.subject()))
        .map(UnmarkedHazard::kind)
        .collect(Collectors.toSet());
  }
}
