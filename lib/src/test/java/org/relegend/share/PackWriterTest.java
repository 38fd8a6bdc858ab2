package org.relegend.share;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.relegend.map.BoardMapSamples.MAIN;
import static org.relegend.map.BoardMapSamples.NOON;
import static org.relegend.map.BoardMapSamples.PAGE;
import static org.relegend.map.BoardMapSamples.TOP;

import com.drew.imaging.ImageMetadataReader;
import com.drew.metadata.Directory;
import com.drew.metadata.Metadata;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.relegend.map.Attestation;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.BoardTurn;
import org.relegend.map.ConfirmPlacement;
import org.relegend.map.Evidence;
import org.relegend.map.HazardZone;
import org.relegend.map.MapTables;
import org.relegend.map.Page;
import org.relegend.map.Photo;
import org.relegend.map.PictureId;
import org.relegend.map.Placement;
import org.relegend.map.Point;
import org.relegend.map.Side;
import org.relegend.map.Subject;
import org.relegend.map.Table;
import org.relegend.map.ZoneId;
import org.relegend.scan.PictureSamples;
import org.relegend.scan.Progress;
import org.relegend.store.Digests;
import org.relegend.store.MapFolder;

/** What goes into a pack, and above all what doesn't. */
class PackWriterTest {
  private static final List<String> PRIVATE =
      List.of(
          "OWNER Wilhelmina Pettigrove",
          "SN-88412-QX",
          "52.37403N",
          "Customer Abernathy",
          "Workshop Bramley");

  @TempDir private Path temp;
  private Path folder;

  /** A map whose photos, notes, authors and neighbours are full of what is nobody's business. */
  @BeforeEach
  void map() throws Exception {
    folder = temp.resolve("map");
    Files.createDirectories(folder.resolve("photos"));
    Files.createDirectories(folder.resolve("pages"));
    BufferedImage image = PictureSamples.discs(64, 48, 1);
    byte[] jpeg = text(PictureSamples.jpeg(image, false));
    byte[] progressive = text(PictureSamples.jpeg(image, true));
    byte[] png = toldPng(PictureSamples.png(image, false));
    byte[] tiff = toldTiff(PictureSamples.tiff(image));
    byte[] page = ("%PDF-1.4 " + String.join(" ", PRIVATE)).getBytes(StandardCharsets.UTF_8);
    BoardMap map = BoardMapSamples.divider();
    map =
        map.with(
            MapTables.PICTURES,
            map.pictures()
                .with(photo("component", "photos/component.jpg", jpeg))
                .with(photo("second", "photos/second.jpg", progressive))
                .with(photo("third", "photos/third.png", png))
                .with(photo("fourth", "photos/fourth.tiff", tiff))
                .with(photo("fifth", "photos/fifth.jpg", PictureSamples.withOrientation(jpeg, 3)))
                .with(
                    new Page(
                        PAGE, "Page 1", "pages/page-1.pdf", 1, Digests.sha256(page), 800, 600)));
    Files.write(folder.resolve("pages/page-1.pdf"), page);
    Attestation owner =
        new Attestation(Evidence.MEASURED, PRIVATE.get(0), NOON, "unit of " + PRIVATE.get(3));
    map =
        map.with(
                MapTables.PLACEMENTS,
                map.placements()
                    .with(new Placement(TOP, Subject.parse("R1"), new Point(5, 5), owner))
                    .with(new Placement(PAGE, Subject.parse("R1"), new Point(9, 9), owner)))
            .with(
                MapTables.PARTS,
                map.parts().with(map.parts().at(0).withNote(String.join("\n", PRIVATE))))
            .withInfo(
                new org.relegend.map.MapInfo(
                    "Sample", "", "", "", PRIVATE.get(1) + PRIVATE.get(4)));
    MapFolder.create(folder, map).close();
    Files.writeString(folder.resolve("job.json"), String.join("\n", PRIVATE));
    Files.writeString(folder.resolve("map.json.bak"), String.join("\n", PRIVATE));
    Files.writeString(folder.resolve("photos/unlisted.txt"), String.join("\n", PRIVATE));
  }

  private Photo photo(String id, String file, byte[] bytes) throws IOException {
    Files.write(folder.resolve(file), bytes);
    return new Photo(
        new PictureId(id),
        id,
        file,
        MAIN,
        Side.COMPONENT,
        BoardTurn.UNKNOWN,
        Digests.sha256(bytes),
        64,
        48);
  }

  /** Exif with GPS and maker, XMP, IPTC, a comment, a preview's text and a tail. */
  private static byte[] text(byte[] jpeg) {
    ByteBuffer out = ByteBuffer.allocate(jpeg.length + 20_000);
    out.put(jpeg, 0, 2);
    segment(out, 0xE1, "Exif\0\0MM\0*\0\0\0\10\0\0\0\0\0\0" + String.join("\0", PRIVATE));
    segment(out, 0xE1, "http://ns.adobe.com/xap/1.0/\0<x>" + String.join(" ", PRIVATE) + "</x>");
    segment(out, 0xE2, "ICC_PROFILE\0\1\1" + PRIVATE.get(0));
    segment(out, 0xE2, "MPF\0" + PRIVATE.get(1));
    segment(out, 0xED, "Photoshop 3.0\0008BIM\4\4\0\0" + String.join(" ", PRIVATE));
    segment(out, 0xFE, String.join(" ", PRIVATE));
    segment(out, 0xEC, PRIVATE.get(2));
    segment(out, 0xEE, "Adobe\0d\0\0\0\0\1" + PRIVATE.get(2));
    out.put(jpeg, 2, jpeg.length - 2);
    out.put(String.join("tail", PRIVATE).getBytes(StandardCharsets.UTF_8));
    byte[] bytes = new byte[out.position()];
    out.flip().get(bytes);
    return bytes;
  }

  private static void segment(ByteBuffer out, int marker, String text) {
    byte[] content = text.getBytes(StandardCharsets.UTF_8);
    out.put((byte) 0xFF).put((byte) marker).putShort((short) (content.length + 2)).put(content);
  }

  private static byte[] toldPng(byte[] png) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(png, 0, 33); // signature and header
    for (String type : List.of("tEXt", "iTXt", "eXIf", "tIME", "prVt")) {
      byte[] content =
          (type + "Comment\0" + String.join(" ", PRIVATE)).getBytes(StandardCharsets.UTF_8);
      CRC32 sum = new CRC32();
      sum.update(content);
      ByteBuffer chunk = ByteBuffer.allocate(8 + content.length);
      chunk.putInt(content.length - 4).put(content).putInt((int) sum.getValue());
      out.write(chunk.array());
    }
    out.write(png, 33, png.length - 33);
    out.write(String.join("tail", PRIVATE).getBytes(StandardCharsets.UTF_8));
    return out.toByteArray();
  }

  private static byte[] toldTiff(byte[] tiff) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(tiff);
    out.write(String.join("tail", PRIVATE).getBytes(StandardCharsets.UTF_8));
    return out.toByteArray();
  }

  private PackReport pack(Path target, PackOptions options) throws Exception {
    try (MapFolder opened = MapFolder.openReadOnly(folder)) {
      return PackWriter.write(opened, target, options, Progress.UNWATCHED);
    }
  }

  /** All that is in a pack, unpacked by the JDK's own reader, and the archive itself. */
  private static List<byte[]> everything(Path pack) throws IOException {
    List<byte[]> all = new ArrayList<>();
    all.add(Files.readAllBytes(pack));
    try (ZipInputStream zip = new ZipInputStream(Files.newInputStream(pack))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        all.add(zip.readAllBytes());
      }
    }
    return all;
  }

  private static boolean holds(byte[] bytes, String text) {
    return new String(bytes, StandardCharsets.ISO_8859_1)
        .contains(new String(text.getBytes(StandardCharsets.UTF_8), StandardCharsets.ISO_8859_1));
  }

  @Test
  void nothingPrivate_isInAPack() throws Exception {
    for (String secret : PRIVATE) {
      assertThat(holds(Files.readAllBytes(folder.resolve("photos/component.jpg")), secret))
          .isTrue();
    }
    Path pack = temp.resolve("a" + PackWriter.ENDING);
    PackReport report = pack(pack, PackOptions.DEFAULT);
    List<byte[]> all = everything(pack);
    assertThat(all).hasSize(1 + 2 + 5);
    for (byte[] content : all) {
      for (String secret : PRIVATE) {
        for (String part : secret.split(" ")) {
          assertThat(holds(content, part)).as(part).isFalse();
        }
      }
    }
    assertThat(report.stayedOut())
        .anyMatch(line -> line.contains("page Page 1"))
        .anyMatch(line -> line.contains("Wilhelmina") && line.contains("author 1"))
        .anyMatch(line -> line.endsWith("4 notes"));
    assertThat(report.wentIn()).anyMatch(line -> line.contains("photos/component.jpg"));
  }

  /** By an independent reader of metadata: only what the pixels need is left. */
  @Test
  void photos_haveNoMetadataLeft_andTheSamePixels() throws Exception {
    Path pack = temp.resolve("a" + PackWriter.ENDING);
    pack(pack, PackOptions.DEFAULT);
    Path out = temp.resolve("out");
    try (PackReader unpack = PackReader.open(pack)) {
      unpack.into(out);
    }
    for (String name : List.of("component.jpg", "second.jpg", "third.png", "fourth.tiff.png")) {
      Path photo = out.resolve("photos").resolve(name);
      Metadata metadata = ImageMetadataReader.readMetadata(photo.toFile());
      for (Directory directory : metadata.getDirectories()) {
        assertThat(directory.getName())
            .isIn("JPEG", "Adobe JPEG", "Huffman", "PNG-IHDR", "File Type", "File");
      }
      BufferedImage before =
          ImageIO.read(
              new ByteArrayInputStream(
                  Files.readAllBytes(
                      folder.resolve("photos").resolve(name.replace(".tiff.png", ".tiff")))));
      BufferedImage after = ImageIO.read(photo.toFile());
      for (int y = 0; y < 48; y++) {
        for (int x = 0; x < 64; x++) {
          assertThat(after.getRGB(x, y)).as(name).isEqualTo(before.getRGB(x, y));
        }
      }
    }
  }

  @Test
  void theSameMap_givesTheSameBytes() throws Exception {
    pack(temp.resolve("a"), PackOptions.DEFAULT);
    pack(temp.resolve("b"), PackOptions.DEFAULT);
    assertThat(temp.resolve("a")).hasSameBinaryContentAs(temp.resolve("b"));
  }

  @Test
  void pages_travelOnlyWhenAsked_namesAndNotesToo() throws Exception {
    PackReport report =
        pack(
            temp.resolve("a"),
            new PackOptions(
                Optional.of(Set.of(TOP)),
                true,
                true,
                false,
                Map.of(PRIVATE.get(0), "bench 4"),
                List.of()));
    List<byte[]> all = everything(temp.resolve("a"));
    assertThat(all).hasSize(1 + 2 + 1 + 1);
    assertThat(holds(all.get(2), "bench 4")).isTrue();
    assertThat(holds(all.get(2), PRIVATE.get(0) + "\"")).isFalse();
    assertThat(holds(all.get(2), PRIVATE.get(3))).isTrue();
    assertThat(report.stayedOut()).anyMatch(line -> line.startsWith("photo second"));
  }

  /** Whoever gets the pack must know that a warning is missing from it. */
  @Test
  void zonesOfPhotosThatStayOut_areToldOf_andNotCountedAsPacked() throws Exception {
    try (MapFolder open = MapFolder.open(folder)) {
      HazardZone zone =
          new HazardZone(
              new ZoneId("mains-1"),
              new PictureId("second"),
              HazardZone.Kind.MAINS,
              List.of(new Point(1, 1), new Point(9, 1), new Point(9, 9)),
              "",
              List.of(BoardMapSamples.says(Evidence.SEEN)));
      open.save(open.map().with(MapTables.ZONES, Table.of(List.of(zone))));
    }
    PackOptions without =
        new PackOptions(Optional.of(Set.of(TOP)), false, false, false, Map.of(), List.<String>of());
    assertThat(pack(temp.resolve("all"), PackOptions.DEFAULT).wentIn())
        .anyMatch(line -> line.endsWith(" 1 hazard zones"));
    PackReport report = pack(temp.resolve("one"), without);
    assertThat(report.wentIn()).anyMatch(line -> line.endsWith(" 0 hazard zones"));
    assertThat(report.stayedOut()).anyMatch(line -> line.startsWith("1 hazard zones"));
  }

  @Test
  void whatMustNeverBeInIt_isFound_andNothingIsWritten() throws Exception {
    PackOptions never =
        new PackOptions(
            Optional.empty(), false, true, false, Map.of(), List.of("customer abernathy"));
    assertThatThrownBy(() -> pack(temp.resolve("a"), never))
        .isInstanceOf(ShareException.class)
        .hasMessageContaining("customer abernathy")
        .hasMessageContaining("the map");
    try (var left = Files.list(temp)) {
      assertThat(left.map(path -> path.getFileName().toString())).containsExactly("map");
    }
  }

  @Test
  void aTakenName_anUnfitFolder_andADamagedPhoto_areOneClearError() throws Exception {
    Files.writeString(temp.resolve("taken"), "x");
    assertThatThrownBy(() -> pack(temp.resolve("taken"), PackOptions.DEFAULT))
        .isInstanceOf(ShareException.class);
    assertThat(temp.resolve("taken")).hasContent("x");
    assertThatThrownBy(() -> pack(temp.resolve("no/such/a"), PackOptions.DEFAULT))
        .isInstanceOf(ShareException.class);
    byte[] cut = Files.readAllBytes(folder.resolve("photos/second.jpg"));
    Files.write(folder.resolve("photos/second.jpg"), java.util.Arrays.copyOf(cut, cut.length / 2));
    assertThatThrownBy(() -> pack(temp.resolve("a"), PackOptions.DEFAULT))
        .isInstanceOf(ShareException.class)
        .hasMessageContaining("second.jpg");
    assertThat(temp.resolve("a")).doesNotExist();
  }

  @Test
  void unpacked_theRecipientsOwnScanOfTheSameDigest_isInItsPlace() throws Exception {
    Path pack = temp.resolve("a" + PackWriter.ENDING);
    pack(pack, PackOptions.DEFAULT);
    Path own = temp.resolve("own scan.pdf");
    Attestation says = new Attestation(Evidence.MATCHED, "Kim", NOON);
    Files.copy(folder.resolve("pages/page-1.pdf"), own);
    try (PackReader unpack = PackReader.open(pack)) {
      assertThat(unpack.into(temp.resolve("with"), List.of(own), says).missing()).isEmpty();
      assertThat(unpack.into(temp.resolve("without"))).hasSize(1);
      assertThatThrownBy(() -> unpack.into(temp.resolve("without")))
          .isInstanceOf(org.relegend.store.StoreException.class)
          .hasMessageContaining("not empty");
    }
    assertThat(temp.resolve("with/pages/page-1.pdf")).hasSameBinaryContentAs(own);
    try (MapFolder opened = MapFolder.openReadOnly(temp.resolve("without"))) {
      assertThat(opened.notices()).isEmpty();
      assertThat(opened.map().placements()).hasSize(2);
    }
  }

  /** The pack is the base of the merge when corrections come back: only those are taken. */
  @Test
  void correctionsOfARecipient_areTakenBack_withoutClashes() throws Exception {
    Path pack = temp.resolve("a" + PackWriter.ENDING);
    pack(pack, PackOptions.DEFAULT);
    try (PackReader unpack = PackReader.open(pack);
        MapFolder mine = MapFolder.openReadOnly(folder)) {
      BoardMap base = unpack.map();
      Placement.Key key = new Placement.Key(TOP, Subject.parse("R1"), 1);
      Attestation cleo = new Attestation(Evidence.BEEPED, "Cleo", NOON.plusSeconds(9));
      BoardMap theirs = new ConfirmPlacement(key, cleo).applyTo(base);
      theirs =
          theirs.with(MapTables.PARTS, theirs.parts().with(theirs.parts().at(0).withValue("5k6")));
      MergeResult merged = Merge.of(base, mine.map(), theirs);
      assertThat(merged.clashes()).isEmpty();
      assertThat(merged.map().parts().at(0).value()).isEqualTo("5k6");
      assertThat(merged.map().parts().at(0).note()).contains(PRIVATE.get(1));
      assertThat(merged.map().placements().find(key).orElseThrow().evidence())
          .extracting(Attestation::author)
          .containsExactly(PRIVATE.get(0), "Cleo");
    }
  }
}
