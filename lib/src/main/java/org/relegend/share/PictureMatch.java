package org.relegend.share;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.relegend.map.BoardMap;
import org.relegend.map.IdRenames;
import org.relegend.map.MapTables;
import org.relegend.map.Page;
import org.relegend.map.Photo;
import org.relegend.map.Picture;
import org.relegend.map.PictureId;
import org.relegend.map.Table;

/**
 * Which new pictures of two versions are one: those of the same bytes, whatever they are called.
 * Two that only have a name in common stay two, since places on the one mean nothing on the other.
 */
final class PictureMatch {
  private final BoardMap base;
  private final IdRenames mine = new IdRenames();
  private final IdRenames theirs = new IdRenames();
  private final Set<PictureId> taken = new HashSet<>();

  private PictureMatch(BoardMap base) {
    this.base = base;
  }

  /** The three versions with one id for each picture, and one file name for each file. */
  static MapVersions unified(MapVersions v) {
    PictureMatch match = new PictureMatch(v.base());
    match.find(v.mine().pictures(), v.theirs().pictures());
    BoardMap m = renamed(v.mine(), match.mine);
    BoardMap t = renamed(v.theirs(), match.theirs);
    return apartByFile(new MapVersions(v.base(), m, t));
  }

  static BoardMap renamed(BoardMap map, IdRenames renames) {
    return renames.none() ? map : MergedIds.renamed(map, renames);
  }

  private void find(Table<PictureId, Picture> m, Table<PictureId, Picture> t) {
    for (Table<PictureId, Picture> table : java.util.List.of(base.pictures(), m, t)) {
      table.forEach(picture -> taken.add(picture.id()));
    }
    Map<String, Picture> byContent = new HashMap<>();
    for (Picture picture : m) {
      if (!base.pictures().has(picture.id())) {
        byContent.putIfAbsent(content(picture), picture);
      }
    }
    for (Picture picture : t) {
      if (base.pictures().has(picture.id())) {
        continue;
      }
      Picture same = byContent.remove(content(picture));
      if (same != null) {
        PictureId id = same.id().compareTo(picture.id()) <= 0 ? same.id() : picture.id();
        boolean free =
            m.find(id).filter(other -> !other.equals(same)).isEmpty()
                && t.find(id).filter(other -> !other.equals(picture)).isEmpty();
        if (free) {
          mine.put(same.id(), id);
          theirs.put(picture.id(), id);
        }
      } else {
        m.find(picture.id()).ifPresent(other -> keepApart(other, picture));
      }
    }
  }

  /** What shows the same: a page of a file, or a side of a board. */
  private static String content(Picture picture) {
    return picture instanceof Page page
        ? page.sha256() + " page " + page.number()
        : picture.sha256() + " photo of " + ((Photo) picture).board() + ((Photo) picture).side();
  }

  private void keepApart(Picture m, Picture t) {
    boolean mineKeeps = content(m).compareTo(content(t)) <= 0;
    PictureId free = free(m.id());
    (mineKeeps ? theirs : mine).put(m.id(), free);
  }

  private PictureId free(PictureId wanted) {
    int number = 2;
    while (!taken.add(new PictureId(wanted.text() + "~" + number))) {
      number++;
    }
    return new PictureId(wanted.text() + "~" + number);
  }

  /** Gives files of one name and different content different names. */
  private static MapVersions apartByFile(MapVersions v) {
    Map<String, Set<String>> contents = new HashMap<>();
    for (BoardMap map : java.util.List.of(v.mine(), v.theirs())) {
      for (Picture picture : map.pictures()) {
        contents.computeIfAbsent(picture.file(), f -> new HashSet<>()).add(picture.sha256());
      }
    }
    Map<String, String> names = new HashMap<>();
    contents.forEach(
        (file, digests) -> {
          String keeps = keeper(file, digests, v.base());
          int number = 2;
          for (String digest : digests.stream().sorted().toList()) {
            if (!digest.equals(keeps)) {
              while (contents.containsKey(numbered(file, number))) {
                number++;
              }
              names.put(file + " " + digest, numbered(file, number++));
            }
          }
        });
    return names.isEmpty()
        ? v
        : new MapVersions(v.base(), filed(v.mine(), names), filed(v.theirs(), names));
  }

  private static String keeper(String file, Set<String> digests, BoardMap base) {
    for (Picture picture : base.pictures()) {
      if (picture.file().equals(file) && digests.contains(picture.sha256())) {
        return picture.sha256();
      }
    }
    return digests.stream().min(Comparator.naturalOrder()).orElseThrow();
  }

  private static String numbered(String file, int number) {
    int dot = file.lastIndexOf('.');
    return dot <= file.lastIndexOf('/')
        ? file + "-" + number
        : file.substring(0, dot) + "-" + number + file.substring(dot);
  }

  private static BoardMap filed(BoardMap map, Map<String, String> names) {
    Table<PictureId, Picture> pictures = map.pictures();
    for (Picture picture : map.pictures()) {
      String name = names.get(picture.file() + " " + picture.sha256());
      if (name != null) {
        pictures = pictures.with(refiled(picture, name));
      }
    }
    return map.with(MapTables.PICTURES, pictures);
  }

  static Picture refiled(Picture picture, String file) {
    return picture instanceof Photo p
        ? new Photo(
            p.id(),
            p.title(),
            file,
            p.board(),
            p.side(),
            p.turn(),
            p.sha256(),
            p.width(),
            p.height())
        : page((Page) picture, file);
  }

  private static Page page(Page p, String file) {
    return new Page(p.id(), p.title(), file, p.number(), p.sha256(), p.width(), p.height());
  }
}
