package org.relegend.twin;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.relegend.map.Attestation;
import org.relegend.map.BoardMap;
import org.relegend.map.ChannelDeviation;
import org.relegend.map.Edit;
import org.relegend.map.MapTables;
import org.relegend.map.Subject;
import org.relegend.map.TwinPair;

/** The edits by which a person takes up what was found. */
public final class TwinAcceptance {
  private TwinAcceptance() {}

  /** Whether a pair may be kept without being looked at by itself: trusted, and no choice open. */
  public static boolean isSure(ProposedTwin pair) {
    return pair.trust() >= ProposedTwin.LOW && pair.basis() != TwinBasis.ONE_OF_SEVERAL;
  }

  /** Whether the map can hold a pair: sections that only the kind tells of aren't in it. */
  public static boolean isHeldBy(BoardMap map, ProposedTwin pair) {
    for (Subject subject : List.of(pair.a(), pair.b())) {
      if (subject instanceof Subject.OfSection section
          && map.part(section.part()).flatMap(part -> part.section(section.section())).isEmpty()) {
        return false;
      }
    }
    return true;
  }

  /** An edit for each sure pair that the map doesn't hold yet. */
  public static List<Edit> ofAll(BoardMap map, List<ProposedTwin> pairs, Attestation known) {
    List<Edit> edits = new ArrayList<>();
    Set<TwinPair.Key> done = new HashSet<>();
    map.twins().forEach(pair -> done.add(pair.key()));
    for (ProposedTwin pair : pairs) {
      if (isSure(pair) && isHeldBy(map, pair) && done.add(twin(pair, known).key())) {
        edits.add(of(pair, known));
      }
    }
    return edits;
  }

  /** The edit for one pair, sure or not. */
  public static Edit of(ProposedTwin pair, Attestation known) {
    return MapTables.TWINS.put(twin(pair, known));
  }

  private static TwinPair twin(ProposedTwin pair, Attestation known) {
    return new TwinPair(pair.a(), pair.b(), List.of(known));
  }

  /** The edit that keeps why the channels differ there. */
  public static Edit mark(
      TwinDifference difference, ChannelDeviation.Cause cause, Attestation known) {
    ChannelDeviation.Key key = difference.key();
    return MapTables.DEVIATIONS.put(
        new ChannelDeviation(key.at(), key.aspect(), cause, List.of(known), difference.text()));
  }
}
