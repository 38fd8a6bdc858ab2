package org.relegend.share;

import java.util.HashMap;
import java.util.Map;
import org.relegend.map.NetId;
import org.relegend.map.PictureId;
import org.relegend.map.Subject;

/** Ids of one version of a map that are other ids in the merged one. */
final class Renames {
  private final Map<PictureId, PictureId> pictures = new HashMap<>();
  private final Map<NetId, NetId> nets = new HashMap<>();

  void put(PictureId from, PictureId to) {
    if (!from.equals(to)) {
      pictures.put(from, to);
    }
  }

  void put(NetId from, NetId to) {
    if (!from.equals(to)) {
      nets.put(from, to);
    }
  }

  boolean none() {
    return pictures.isEmpty() && nets.isEmpty();
  }

  PictureId of(PictureId picture) {
    return pictures.getOrDefault(picture, picture);
  }

  NetId of(NetId net) {
    return nets.getOrDefault(net, net);
  }

  Subject of(Subject subject) {
    return subject instanceof Subject.OfNet s ? Subject.of(of(s.net())) : subject;
  }
}
