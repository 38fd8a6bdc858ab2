package org.relegend.map;

import java.util.HashMap;
import java.util.Map;

/** Ids of one version of a map that are other ids in another one. */
public final class IdRenames {
  private final Map<PictureId, PictureId> pictures = new HashMap<>();
  private final Map<NetId, NetId> nets = new HashMap<>();

  public void put(PictureId from, PictureId to) {
    if (!from.equals(to)) {
      pictures.put(from, to);
    }
  }

  public void put(NetId from, NetId to) {
    if (!from.equals(to)) {
      nets.put(from, to);
    }
  }

  public boolean none() {
    return pictures.isEmpty() && nets.isEmpty();
  }

  public PictureId of(PictureId picture) {
    return pictures.getOrDefault(picture, picture);
  }

  public NetId of(NetId net) {
    return nets.getOrDefault(net, net);
  }

  public Subject of(Subject subject) {
    return subject instanceof Subject.OfNet s ? Subject.of(of(s.net())) : subject;
  }
}
