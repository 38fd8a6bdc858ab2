package org.relegend.share;

import org.relegend.map.BoardId;
import org.relegend.map.NetId;
import org.relegend.map.PartId;
import org.relegend.map.PictureId;
import org.relegend.map.Subject;

/** What one entry of a map speaks of: another entry, by its table and key. */
record Ref(String table, String key) {
  static Ref to(BoardId board) {
    return new Ref("boards", board.text());
  }

  static Ref to(PictureId picture) {
    return new Ref("pictures", picture.text());
  }

  static Ref to(PartId part) {
    return new Ref("parts", part.text());
  }

  static Ref to(NetId net) {
    return new Ref("nets", net.text());
  }

  static Ref to(Subject subject) {
    if (subject instanceof Subject.OfPart s) {
      return to(s.part());
    }
    if (subject instanceof Subject.OfSection s) {
      return to(s.part());
    }
    if (subject instanceof Subject.OfPin s) {
      return to(s.pin().part());
    }
    return to(((Subject.OfNet) subject).net());
  }

  static Ref toChannel(String channel) {
    return new Ref("channels", channel);
  }
}
