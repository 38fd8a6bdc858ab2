package org.relegend.share;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import org.relegend.map.BoardMap;
import org.relegend.store.Digests;
import org.relegend.store.MapFormat;

/** Archives written byte by byte after the APPNOTE, so that they can be wrong in any way. */
final class Zips {
  /** One file, and what its two headers say of it. */
  static final class File {
    final String name;
    final byte[] content;
    String localName;
    int method;
    int attributes;
    long text;
    int flags = 0x800;
    byte[] raw;

    File(String name, byte[] content) {
      this.name = name;
      this.localName = name;
      this.content = content;
      this.raw = content;
      this.text = content.length;
    }

    File deflated() {
      Deflater deflater = new Deflater(9, true);
      deflater.setInput(content);
      deflater.finish();
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      byte[] piece = new byte[1 << 16];
      while (!deflater.finished()) {
        out.write(piece, 0, deflater.deflate(piece));
      }
      deflater.end();
      raw = out.toByteArray();
      method = 8;
      return this;
    }
  }

  private Zips() {}

  static byte[] of(List<File> files) throws IOException {
    return of(files, "", "");
  }

  static byte[] of(List<File> files, String before, String behind) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(before.getBytes(StandardCharsets.UTF_8));
    ByteArrayOutputStream directory = new ByteArrayOutputStream();
    for (File file : files) {
      CRC32 sum = new CRC32();
      sum.update(file.content);
      int at = out.size();
      byte[] local = file.localName.getBytes(StandardCharsets.UTF_8);
      out.write(
          little(30)
              .putInt(0x04034B50)
              .putShort((short) 20)
              .putShort((short) file.flags)
              .putShort((short) file.method)
              .putInt(0x00410000)
              .putInt((int) sum.getValue())
              .putInt(file.raw.length)
              .putInt((int) file.text)
              .putShort((short) local.length)
              .putShort((short) 0)
              .array());
      out.write(local);
      out.write(file.raw);
      byte[] name = file.name.getBytes(StandardCharsets.UTF_8);
      directory.write(
          little(46)
              .putInt(0x02014B50)
              .putShort((short) 0x314)
              .putShort((short) 20)
              .putShort((short) file.flags)
              .putShort((short) file.method)
              .putInt(0x00410000)
              .putInt((int) sum.getValue())
              .putInt(file.raw.length)
              .putInt((int) file.text)
              .putShort((short) name.length)
              .putShort((short) 0)
              .putShort((short) 0)
              .putShort((short) 0)
              .putShort((short) 0)
              .putInt(file.attributes)
              .putInt(at)
              .array());
      directory.write(name);
    }
    int start = out.size();
    out.write(directory.toByteArray());
    out.write(
        little(22)
            .putInt(0x06054B50)
            .putInt(0)
            .putShort((short) files.size())
            .putShort((short) files.size())
            .putInt(directory.size())
            .putInt(start)
            .putShort((short) 0)
            .array());
    out.write(behind.getBytes(StandardCharsets.UTF_8));
    return out.toByteArray();
  }

  private static ByteBuffer little(int size) {
    return ByteBuffer.allocate(size).order(ByteOrder.LITTLE_ENDIAN);
  }

  /** The files of a pack with this map and these others, with a true manifest. */
  static List<File> pack(BoardMap map, Map<String, byte[]> others) {
    Map<String, byte[]> all = new LinkedHashMap<>();
    all.put("map.json", MapFormat.write(map));
    all.putAll(others);
    List<Manifest.Entry> entries = new ArrayList<>();
    List<File> files = new ArrayList<>();
    all.forEach(
        (name, content) -> {
          entries.add(new Manifest.Entry(name, content.length, Digests.sha256(content)));
          files.add(new File(name, content));
        });
    files.add(0, new File("manifest.json", new Manifest(map.id(), entries).bytes()));
    return files;
  }
}
