package org.relegend.share;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionJavaScript;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.BoardTurn;
import org.relegend.map.MapTables;
import org.relegend.map.Page;
import org.relegend.map.Photo;
import org.relegend.map.PictureId;
import org.relegend.map.Side;
import org.relegend.scan.PictureSamples;
import org.relegend.store.Digests;
import org.relegend.store.StoreException;

/** Files that pretend to be packs: each refused with one line, and nothing written anywhere. */
class HostilePackTest {
  @TempDir private Path temp;

  private static BoardMap map() {
    return BoardMapSamples.divider();
  }

  /** Refused, in one line that names the file, with nothing left behind. */
  private void refused(byte[] bytes, String why) throws IOException {
    Path inside = Files.createDirectories(temp.resolve("in/side"));
    Path file = Files.write(inside.resolve("bad.relegend-pack"), bytes);
    assertThatThrownBy(
            () -> {
              try (PackReader pack = PackReader.open(file)) {
                pack.into(inside.resolve("out"));
              }
            })
        .isInstanceOfAny(ShareException.class, StoreException.class)
        .hasMessageContaining("bad.relegend-pack")
        .hasMessageContaining(why)
        .satisfies(e -> assertThat(e.getMessage()).doesNotContain("\n"));
    try (Stream<Path> left = Files.walk(temp)) {
      assertThat(left.filter(Files::isRegularFile)).containsExactly(file);
    }
    try (Stream<Path> left = Files.list(inside)) {
      assertThat(left).containsExactly(file);
    }
  }

  private static List<Zips.File> with(Zips.File... more) {
    List<Zips.File> files = new ArrayList<>(Zips.pack(map(), Map.of()));
    files.addAll(List.of(more));
    return files;
  }

  private static Zips.File file(String name) {
    return new Zips.File(name, new byte[] {1, 2, 3});
  }

  @Test
  void anHonestPack_writtenByHand_isTaken() throws Exception {
    Path file = Files.write(temp.resolve("a"), Zips.of(Zips.pack(map(), Map.of())));
    try (PackReader pack = PackReader.open(file)) {
      pack.into(temp.resolve("out"));
      assertThat(pack.map()).isEqualTo(map());
    }
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {
        "../evil", "photos/../../evil", "/evil", "C:evil", "C:/evil", "photos\\evil",
            "\\\\host\\evil",
        "photos/./evil", "photos//evil", "photos/", "CON", "photos/nul.jpg", "pages/LPT1",
            "photos/a.",
        "photos/com1.tar.gz", "photos/a ", " /evil"
      })
  void namesThatLeadElsewhere_areRefused(String name) throws IOException {
    refused(Zips.of(with(file(name))), "");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"photos/a\u202Egpj.exe", "photos/a\u0000b", "photos/a\nb", "photos/\u200Ba"})
  void namesWithControlMarks_areRefused_andSpeltOut(String name) throws IOException {
    refused(Zips.of(with(file(name))), "name that can't be");
  }

  @Test
  void links_areRefused() throws IOException {
    Zips.File link = new Zips.File("photos/a", "../../evil".getBytes(StandardCharsets.UTF_8));
    link.attributes = 0xA1FF << 16;
    refused(Zips.of(with(link)), "link");
    Zips.File device = file("photos/a");
    device.attributes = 0x61FF << 16;
    refused(Zips.of(with(device)), "device");
  }

  @Test
  void namesThatAreTwice_alsoInOtherCase_areRefused() throws IOException {
    refused(Zips.of(with(file("map.json"))), "twice");
    refused(Zips.of(with(file("MAP.json"))), "twice");
    refused(Zips.of(with(file("photos/a"), file("Photos/A"))), "twice");
  }

  @Test
  void bombs_areRefused() throws IOException {
    Zips.File zeros = new Zips.File("photos/a", new byte[32 << 20]).deflated();
    refused(Zips.of(with(zeros)), "times its size");
    Zips.File lying = new Zips.File("photos/a", new byte[1 << 20]).deflated();
    lying.text = 1000;
    List<Zips.File> files = with(lying);
    refused(Zips.of(files), "");
    Zips.File huge = new Zips.File("photos/a", new byte[10]);
    huge.text = 3L << 30;
    huge.method = 8;
    refused(Zips.of(with(huge)), "MB");
    List<Zips.File> many = with();
    for (int i = 0; i < 2_100; i++) {
      many.add(file("photos/" + i));
    }
    refused(Zips.of(many), "files");
  }

  @Test
  void archivesInArchives_areJustFilesThatDontBelong() throws IOException {
    byte[] inner = Zips.of(with());
    refused(Zips.of(with(new Zips.File("photos/inner.zip", inner))), "more in it");
  }

  @Test
  void twoArchivesInOne_areRefused() throws IOException {
    Zips.File other = file("photos/a");
    other.localName = "photos/b";
    refused(Zips.of(with(other)), "two names");
    refused(Zips.of(with(), "#!/bin/sh\n", ""), "");
    refused(Zips.of(with(), "", "tail"), "");
    refused(new byte[0], "too short");
    refused("no archive at all, but long enough to be one".getBytes(StandardCharsets.UTF_8), "");
    byte[] whole = Zips.of(with());
    refused(java.util.Arrays.copyOf(whole, whole.length - 30), "");
  }

  @Test
  void encryptedFiles_andUnknownWaysOfPacking_areRefused() throws IOException {
    Zips.File locked = file("photos/a");
    locked.flags |= 1;
    refused(Zips.of(with(locked)), "encrypted");
    Zips.File odd = file("photos/a");
    odd.method = 12;
    refused(Zips.of(with(odd)), "unknown way");
  }

  @Test
  void wrongDigests_andWhatTheManifestDoesntTell_areRefused() throws IOException {
    List<Zips.File> changed = with();
    byte[] map = changed.get(1).content.clone();
    map[map.length - 2] = ' ';
    changed.set(
        1,
        new Zips.File(
            "map.json",
            new String(map, StandardCharsets.UTF_8)
                .replace("Sample", "Simple")
                .getBytes(StandardCharsets.UTF_8)));
    refused(Zips.of(changed), "");
    refused(Zips.of(with(file("photos/a.jpg"))), "more in it than its manifest tells");
    refused(Zips.of(List.of(with().get(1))), "no manifest.json");
    refused(Zips.of(List.of(with().get(0))), "no map.json");
    refused(
        Zips.of(
            List.of(
                new Zips.File(
                    "manifest.json",
                    new String(with().get(0).content, StandardCharsets.UTF_8)
                        .replace("\"format\" : 1", "\"format\" : 99")
                        .getBytes(StandardCharsets.UTF_8)),
                with().get(1))),
        "newer version");
  }

  @Test
  void jsonBombs_areRefused() throws IOException {
    for (String text :
        List.of(
            "[".repeat(100_000),
            "{\"format\":" + "[".repeat(50_000),
            "{\"format\": 1" + "0".repeat(100_000) + "}",
            "{\"format\": 1, \"kind\": \"" + "a".repeat(300_000) + "\"}",
            "{\"format\": 1, \"format\": 1}")) {
      byte[] bomb = text.getBytes(StandardCharsets.UTF_8);
      refused(Zips.of(List.of(new Zips.File("manifest.json", bomb), with().get(1))), "");
      List<Manifest.Entry> entries =
          List.of(new Manifest.Entry("map.json", bomb.length, Digests.sha256(bomb)));
      refused(
          Zips.of(
              List.of(
                  new Zips.File("manifest.json", new Manifest("sample", entries).bytes()),
                  new Zips.File("map.json", bomb))),
          "");
    }
  }

  private static BoardMap withPhoto(byte[] photo, double width, double height) {
    return map()
        .with(
            MapTables.PICTURES,
            map()
                .pictures()
                .with(
                    new Photo(
                        new PictureId("p"),
                        "",
                        "photos/p.png",
                        BoardMapSamples.MAIN,
                        Side.COMPONENT,
                        BoardTurn.UNKNOWN,
                        Digests.sha256(photo),
                        width,
                        height)));
  }

  @Test
  void picturesThatArent_orAreGiantByTheirHeader_areRefused() throws IOException {
    byte[] giant = PictureSamples.hollowPng(50_000, 50_000);
    refused(
        Zips.of(Zips.pack(withPhoto(giant, 50_000, 50_000), Map.of("photos/p.png", giant))),
        "megapixels");
    byte[] text = "#!/bin/sh\nrm -rf /\n".getBytes(StandardCharsets.UTF_8);
    refused(Zips.of(Zips.pack(withPhoto(text, 4, 4), Map.of("photos/p.png", text))), "p.png");
    byte[] small = PictureSamples.png(PictureSamples.discs(20, 10, 1), false);
    refused(
        Zips.of(Zips.pack(withPhoto(small, 4000, 3000), Map.of("photos/p.png", small))),
        "another size");
    BoardMap other = withPhoto(small, 20, 10);
    refused(
        Zips.of(Zips.pack(other, Map.of("photos/p.png", text))), "digest of photos/p.png is wrong");
  }

  @Test
  void pdfsWithActions_areRefused_andPlainOnesTaken() throws Exception {
    for (boolean acts : new boolean[] {true, false}) {
      Path pdf = temp.resolveSibling(temp.getFileName() + "-" + acts + ".pdf");
      try (PDDocument document = new PDDocument()) {
        document.addPage(new PDPage());
        if (acts) {
          document.getDocumentCatalog().setOpenAction(new PDActionJavaScript("app.alert(1)"));
        }
        document.save(pdf.toFile());
      }
      byte[] bytes = Files.readAllBytes(pdf);
      Files.delete(pdf);
      BoardMap map =
          map()
              .with(
                  MapTables.PICTURES,
                  map()
                      .pictures()
                      .with(
                          new Page(
                              BoardMapSamples.PAGE,
                              "",
                              "pages/page-1.pdf",
                              1,
                              Digests.sha256(bytes),
                              612,
                              792)));
      byte[] pack = Zips.of(Zips.pack(map, Map.of("pages/page-1.pdf", bytes)));
      if (acts) {
        refused(pack, "does more than show pages");
      } else {
        Path file = Files.write(temp.resolve("plain"), pack);
        assertThatCode(
                () -> {
                  try (PackReader unpack = PackReader.open(file)) {
                    unpack.into(temp.resolve("out"));
                  }
                })
            .doesNotThrowAnyException();
      }
    }
  }
}
