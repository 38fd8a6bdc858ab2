package org.relegend.share;

import java.io.EOFException;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.zip.CRC32;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;
import org.relegend.map.NameRules;

/**
 * A ZIP archive (PKWARE APPNOTE 6.3) read without trust: the directory at its end and the headers
 * in it must agree and account for every byte, so that no two readers can see two different
 * archives in it. Nothing is unpacked beyond what the manifest promises.
 */
final class PackArchive implements AutoCloseable {
  /** Most files in one pack. */
  static final int MAX_FILES = 2_000;

  /** Largest file unpacked, in bytes. */
  static final long MAX_FILE = 256L << 20;

  /** Largest sum of all files unpacked, in bytes. */
  static final long MAX_TOTAL = 4L << 30;

  /** Most bytes that one packed byte may become: text packs some twenty to one. */
  static final int MAX_RATIO = 200;

  private static final int END = 22;
  private static final int DIRECTORY_ENTRY = 46;
  private static final int LOCAL_HEADER = 30;
  private static final int SIGNED_DESCRIPTOR = 16;
  private static final int MAX_DIRECTORY = 1 << 20;
  private static final int HAS_DESCRIPTOR = 8;
  private static final int UTF8 = 0x800;
  private static final int STORED = 0;
  private static final int DEFLATED = 8;
  private static final Set<String> DEVICES =
      Set.of(
          "con", "prn", "aux", "nul", "com0", "com1", "com2", "com3", "com4", "com5", "com6",
          "com7", "com8", "com9", "lpt0", "lpt1", "lpt2", "lpt3", "lpt4", "lpt5", "lpt6", "lpt7",
          "lpt8", "lpt9");

  /** One file of the archive, and where its bytes are. */
  record Entry(String name, int flags, int method, long crc, long packed, long size, long header) {}

  private final Path file;
  private final FileChannel channel;
  private final Map<String, Entry> entries = new LinkedHashMap<>();
  private final Map<String, Long> contents = new LinkedHashMap<>();

  private PackArchive(Path file, FileChannel channel) {
    this.file = file;
    this.channel = channel;
  }

  /**
   * Reads the directory of an archive.
   *
   * @throws ShareException where it is no archive that can be taken
   */
  static PackArchive open(Path file) throws ShareException {
    try {
      FileChannel channel = FileChannel.open(file, StandardOpenOption.READ);
      PackArchive archive = new PackArchive(file, channel);
      try {
        archive.readDirectory();
        return archive;
      } catch (IOException | ShareException e) {
        channel.close();
        throw e;
      }
    } catch (EOFException e) {
      throw new ShareException(file, "the pack is cut off. Get it again from its sender.", e);
    } catch (IOException e) {
      throw new ShareException(
          file, "it can't be read (%s). Check the path.".formatted(e.getMessage()), e);
    }
  }

  Map<String, Entry> entries() {
    return entries;
  }

  private ShareException refused(String why) {
    return new ShareException(file, why + ". It is not taken; nothing was written.");
  }

  private ByteBuffer read(long at, int count) throws IOException {
    ByteBuffer bytes = ByteBuffer.allocate(count).order(ByteOrder.LITTLE_ENDIAN);
    while (bytes.hasRemaining()) {
      if (channel.read(bytes, at + bytes.position()) < 0) {
        throw new EOFException();
      }
    }
    return bytes.flip();
  }

  private void readDirectory() throws IOException, ShareException {
    long size = channel.size();
    if (size < END) {
      throw refused("this is no pack: it is too short");
    }
    ByteBuffer end = read(size - END, END);
    if (end.getInt(0) != 0x06054B50) {
      throw refused("this is no pack, or it is cut off, or something stands behind its end");
    }
    int count = end.getShort(10) & 0xFFFF;
    long length = end.getInt(12) & 0xFFFFFFFFL;
    long start = end.getInt(16) & 0xFFFFFFFFL;
    boolean whole =
        end.getShort(4) == 0
            && end.getShort(6) == 0
            && (end.getShort(8) & 0xFFFF) == count
            && end.getShort(20) == 0
            && start + length == size - END;
    if (!whole) {
      throw refused("the directory of the pack contradicts itself");
    }
    if (count > MAX_FILES || length > MAX_DIRECTORY) {
      throw refused("the pack has more than %,d files".formatted(MAX_FILES));
    }
    ByteBuffer directory = read(start, (int) length);
    for (int i = 0; i < count; i++) {
      readEntry(directory);
    }
    if (directory.hasRemaining()) {
      throw refused("the directory of the pack holds more than its files");
    }
    placeContents(start);
  }

  private void readEntry(ByteBuffer d) throws ShareException {
    int at = d.position();
    if (d.remaining() < DIRECTORY_ENTRY || d.getInt(at) != 0x02014B50) {
      throw refused("the directory of the pack is damaged");
    }
    int nameLength = d.getShort(at + 28) & 0xFFFF;
    int extra = d.getShort(at + 30) & 0xFFFF;
    int comment = d.getShort(at + 32) & 0xFFFF;
    if (d.remaining() < DIRECTORY_ENTRY + nameLength + extra + comment) {
      throw refused("the directory of the pack is damaged");
    }
    byte[] raw = new byte[nameLength];
    d.position(at + DIRECTORY_ENTRY);
    d.get(raw);
    d.position(at + DIRECTORY_ENTRY + nameLength + extra + comment);
    String name = checkedName(raw);
    if (extra + comment > 0) {
      throw refused("%s carries more than a file".formatted(name));
    }
    int kind = (d.getInt(at + 38) >>> 28) & 0xF;
    if (kind != 0 && kind != 8) {
      throw refused("%s is a link or a device, not a file".formatted(name));
    }
    Entry entry =
        new Entry(
            name,
            d.getShort(at + 8) & 0xFFFF,
            d.getShort(at + 10) & 0xFFFF,
            d.getInt(at + 16) & 0xFFFFFFFFL,
            d.getInt(at + 20) & 0xFFFFFFFFL,
            d.getInt(at + 24) & 0xFFFFFFFFL,
            d.getInt(at + 42) & 0xFFFFFFFFL);
    add(entry);
  }

  private void add(Entry entry) throws ShareException {
    if ((entry.flags() & ~(HAS_DESCRIPTOR | UTF8 | 6)) != 0) {
      throw refused("%s is encrypted or packed in an unknown way".formatted(entry.name()));
    }
    if (entry.method() != STORED && entry.method() != DEFLATED
        || entry.method() == STORED && entry.packed() != entry.size()) {
      throw refused("%s is packed in an unknown way".formatted(entry.name()));
    }
    if (entry.size() > MAX_FILE) {
      throw refused("%s would have more than %d MB".formatted(entry.name(), MAX_FILE >> 20));
    }
    if (entry.size() > 1 << 16 && entry.size() / MAX_RATIO > entry.packed()) {
      throw refused(
          "%s would grow to more than %d times its size".formatted(entry.name(), MAX_RATIO));
    }
    String folded = entry.name().toLowerCase(Locale.ROOT);
    if (entries.keySet().stream()
        .anyMatch(known -> known.toLowerCase(Locale.ROOT).equals(folded))) {
      throw refused("%s is in it twice".formatted(entry.name()));
    }
    entries.put(entry.name(), entry);
    long total = entries.values().stream().mapToLong(Entry::size).sum();
    if (total > MAX_TOTAL) {
      throw refused("all its files would have more than %d GB".formatted(MAX_TOTAL >> 30));
    }
  }

  private String checkedName(byte[] raw) throws ShareException {
    String name;
    try {
      name =
          StandardCharsets.UTF_8
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPORT)
              .decode(ByteBuffer.wrap(raw))
              .toString();
      NameRules.checked("file name", name);
    } catch (CharacterCodingException | IllegalArgumentException e) {
      throw refused(
          "a file in it has a name that can't be: "
              + NameRules.printable(new String(raw, StandardCharsets.UTF_8)));
    }
    boolean climbs = name.startsWith("/") || name.contains("\\") || name.contains(":");
    for (String step : name.split("/", -1)) {
      String stem = step.split("\\.", 2)[0].strip().toLowerCase(Locale.ROOT);
      climbs |=
          step.isBlank()
              || step.equals(".")
              || step.equals("..")
              || step.endsWith(".")
              || step.endsWith(" ")
              || DEVICES.contains(stem);
    }
    if (climbs) {
      throw refused(
          "%s is no name for a file inside a folder".formatted(NameRules.printable(name)));
    }
    return name;
  }

  /** Each file must begin where the one before it ends, the first at the very beginning. */
  private void placeContents(long directory) throws IOException, ShareException {
    List<Entry> inOrder = new ArrayList<>(entries.values());
    inOrder.sort((a, b) -> Long.compare(a.header(), b.header()));
    long at = 0;
    for (Entry entry : inOrder) {
      if (entry.header() != at || at + LOCAL_HEADER > directory) {
        throw refused("the files of the pack overlap or leave gaps");
      }
      ByteBuffer h = read(at, LOCAL_HEADER);
      boolean later = (entry.flags() & HAS_DESCRIPTOR) != 0;
      int nameLength = h.getShort(26) & 0xFFFF;
      boolean fits =
          h.getInt(0) == 0x04034B50
              && (h.getShort(6) & 0xFFFF) == entry.flags()
              && (h.getShort(8) & 0xFFFF) == entry.method()
              && h.getShort(28) == 0
              && same(h.getInt(14), entry.crc(), later)
              && same(h.getInt(18), entry.packed(), later)
              && same(h.getInt(22), entry.size(), later)
              && at + LOCAL_HEADER + nameLength <= directory;
      if (!fits) {
        throw refused("the pack says two things of %s".formatted(entry.name()));
      }
      ByteBuffer name = read(at + LOCAL_HEADER, nameLength);
      if (!entry.name().equals(StandardCharsets.UTF_8.decode(name).toString())) {
        throw refused("the pack has two names for %s".formatted(entry.name()));
      }
      long content = at + LOCAL_HEADER + nameLength;
      contents.put(entry.name(), content);
      at = content + entry.packed() + (later ? SIGNED_DESCRIPTOR : 0);
    }
    if (at != directory) {
      throw refused("something stands between the files of the pack and its directory");
    }
  }

  private static boolean same(int local, long result, boolean later) {
    return later && local == 0 || (local & 0xFFFFFFFFL) == result;
  }

  /**
   * Unpacks one file, and not a byte more than it should have.
   *
   * @throws ShareException where it isn't what the directory says
   */
  void copy(Entry entry, OutputStream out) throws IOException, ShareException {
    CRC32 sum = new CRC32();
    long from = contents.getOrDefault(entry.name(), 0L);
    long size =
        entry.method() == STORED ? stored(entry, from, out, sum) : inflated(entry, from, out, sum);
    if (size != entry.size() || sum.getValue() != entry.crc()) {
      throw refused("%s is damaged".formatted(entry.name()));
    }
  }

  private long stored(Entry entry, long from, OutputStream out, CRC32 sum) throws IOException {
    long done = 0;
    while (done < entry.packed()) {
      byte[] piece = piece(entry, from, done);
      sum.update(piece);
      out.write(piece);
      done += piece.length;
    }
    return done;
  }

  private byte[] piece(Entry entry, long from, long done) throws IOException {
    return read(from + done, (int) Math.min(1 << 16, entry.packed() - done)).array();
  }

  private long inflated(Entry entry, long from, OutputStream out, CRC32 sum)
      throws IOException, ShareException {
    Inflater inflater = new Inflater(true);
    try {
      byte[] piece = new byte[1 << 16];
      long done = 0;
      long size = 0;
      while (!inflater.finished()) {
        if (inflater.needsInput()) {
          if (done == entry.packed()) {
            throw refused("%s is cut off".formatted(entry.name()));
          }
          byte[] input = piece(entry, from, done);
          inflater.setInput(input);
          done += input.length;
        }
        int count = inflater.inflate(piece);
        size += count;
        if (size > entry.size() || inflater.needsDictionary()) {
          throw refused("%s has more in it than it says".formatted(entry.name()));
        }
        sum.update(piece, 0, count);
        out.write(piece, 0, count);
      }
      if (done != entry.packed() || inflater.getRemaining() > 0) {
        throw refused("something stands behind the end of %s".formatted(entry.name()));
      }
      return size;
    } catch (DataFormatException e) {
      throw refused("%s is damaged".formatted(entry.name()));
    } finally {
      inflater.end();
    }
  }

  @Override
  public void close() throws ShareException {
    try {
      channel.close();
    } catch (IOException e) {
      throw new ShareException(file, "it can't be closed (%s)".formatted(e.getMessage()), e);
    }
  }
}
