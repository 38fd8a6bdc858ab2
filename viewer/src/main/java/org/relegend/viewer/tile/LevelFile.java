package org.relegend.viewer.tile;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.zip.CRC32;

/**
 * The tiles of one picture on disk, in one file: coded tiles, then an index, then where the index
 * begins and its checksum. It is written beside its place and moved there once complete, so a file
 * in its place is whole. Tiles can be read while others are still added. Any thread may call it.
 */
final class LevelFile implements Closeable {
  /** Changes whenever the layout does: older files are then made anew. */
  private static final int MAGIC = 0x524C5432;

  private static final int TRAILER_BYTES = 8 + 4 + 8 + 4;
  private static final int MAX_INDEX_BYTES = 1 << 22;
  private static final int MAX_TILE_BYTES = 1 << 22;

  private record Extent(long offset, int length) {}

  private final FileChannel channel;
  private final Map<TileKey, Extent> index = new ConcurrentHashMap<>();
  private long end;

  private LevelFile(FileChannel channel) {
    this.channel = channel;
  }

  /** Begins a new one; {@link #complete} or {@link #close} ends it. */
  static LevelFile create(Path part) throws IOException {
    return new LevelFile(
        FileChannel.open(
            part,
            StandardOpenOption.CREATE,
            StandardOpenOption.TRUNCATE_EXISTING,
            StandardOpenOption.READ,
            StandardOpenOption.WRITE));
  }

  /** Opens a complete one; empty where there is none, or it is of another layout or damaged. */
  static Optional<LevelFile> open(Path file) {
    if (!Files.isRegularFile(file)) {
      return Optional.empty();
    }
    try {
      LevelFile levels = new LevelFile(FileChannel.open(file, StandardOpenOption.READ));
      try {
        levels.readIndex();
        return Optional.of(levels);
      } catch (IOException | RuntimeException damaged) {
        levels.close();
        return Optional.empty();
      }
    } catch (IOException unreadable) {
      return Optional.empty();
    }
  }

  boolean has(TileKey key) {
    return index.containsKey(key);
  }

  int count() {
    return index.size();
  }

  /** Reads one tile. */
  byte[] read(TileKey key) throws IOException {
    Extent extent = index.get(key);
    if (extent == null) {
      throw new IOException("there is no " + key);
    }
    return read(extent.offset, extent.length);
  }

  /** Adds one tile. */
  synchronized void add(TileKey key, byte[] coded) throws IOException {
    write(coded);
    index.put(key, new Extent(end - coded.length, coded.length));
  }

  /** Writes the index and moves the file to its place. */
  synchronized void complete(Path part, Path place) throws IOException {
    byte[] content = indexBytes();
    CRC32 sum = new CRC32();
    sum.update(content);
    ByteBuffer trailer = ByteBuffer.allocate(TRAILER_BYTES);
    trailer.putLong(end).putInt(content.length).putLong(sum.getValue()).putInt(MAGIC);
    write(content);
    write(trailer.array());
    channel.force(false);
    Files.move(part, place, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
  }

  private byte[] indexBytes() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    DataOutputStream out = new DataOutputStream(bytes);
    for (Map.Entry<TileKey, Extent> entry : index.entrySet()) {
      out.writeInt(entry.getKey().level());
      out.writeInt(entry.getKey().column());
      out.writeInt(entry.getKey().row());
      out.writeLong(entry.getValue().offset);
      out.writeInt(entry.getValue().length);
    }
    return bytes.toByteArray();
  }

  private void readIndex() throws IOException {
    long size = channel.size();
    ByteBuffer trailer = ByteBuffer.wrap(read(size - TRAILER_BYTES, TRAILER_BYTES));
    long start = trailer.getLong();
    int length = trailer.getInt();
    long sum = trailer.getLong();
    if (trailer.getInt() != MAGIC
        || length > MAX_INDEX_BYTES
        || start + length + TRAILER_BYTES != size) {
      throw new IOException("not the expected layout");
    }
    byte[] content = read(start, length);
    CRC32 actual = new CRC32();
    actual.update(content);
    if (actual.getValue() != sum) {
      throw new IOException("the index is damaged");
    }
    DataInputStream in = new DataInputStream(new ByteArrayInputStream(content));
    while (in.available() > 0) {
      TileKey key = new TileKey(in.readInt(), in.readInt(), in.readInt());
      index.put(key, new Extent(in.readLong(), in.readInt()));
    }
  }

  private byte[] read(long offset, int length) throws IOException {
    if (offset < 0 || length < 0 || length > MAX_TILE_BYTES) {
      throw new IOException("no such place in the file");
    }
    ByteBuffer bytes = ByteBuffer.allocate(length);
    long position = offset;
    while (bytes.hasRemaining()) {
      int count = channel.read(bytes, position);
      if (count < 0) {
        throw new IOException("the file ends too early");
      }
      position += count;
    }
    return bytes.array();
  }

  private void write(byte[] content) throws IOException {
    ByteBuffer bytes = ByteBuffer.wrap(content);
    while (bytes.hasRemaining()) {
      end += channel.write(bytes, end);
    }
  }

  @Override
  public void close() throws IOException {
    channel.close();
  }
}
