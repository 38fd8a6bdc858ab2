package org.relegend.scan;

import java.awt.Point;
import java.awt.Rectangle;
import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.DataBufferByte;
import java.awt.image.PixelInterleavedSampleModel;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;

/**
 * Stands in for the pixels of a large image, of which it holds one row only: a reader that writes
 * its rows in order has them passed on, a writer that reads them in order has them fetched. So an
 * image can be decoded or encoded without ever being in memory.
 */
abstract class RowRaster extends WritableRaster {
  private final byte[] line;
  private int pixelRow = -1;

  RowRaster(int width, int height, int bands) {
    this(width, height, bands, new byte[Math.multiplyExact(width, bands)]);
  }

  private RowRaster(int width, int height, int bands, byte[] line) {
    super(
        new PixelInterleavedSampleModel(
            DataBuffer.TYPE_BYTE, width, height, bands, width * bands, offsets(bands)),
        new DataBufferByte(line, line.length),
        new Point(0, 0));
    this.line = line;
  }

  /** A row was decoded; the array is used again for the next. */
  abstract void put(int y, byte[] row);

  /** A row is needed. */
  abstract void fetch(int y, byte[] row);

  /** An image over this raster, in grey (1, or 2 with alpha) or sRGB (3, or 4 with alpha). */
  final BufferedImage image() {
    boolean grey = numBands <= 2;
    boolean alpha = numBands % 2 == 0;
    ColorSpace space = ColorSpace.getInstance(grey ? ColorSpace.CS_GRAY : ColorSpace.CS_sRGB);
    ComponentColorModel colours =
        new ComponentColorModel(
            space,
            alpha,
            false,
            alpha ? ComponentColorModel.TRANSLUCENT : ComponentColorModel.OPAQUE,
            DataBuffer.TYPE_BYTE);
    return new BufferedImage(colours, this, false, null);
  }

  @Override
  public void setRect(int dx, int dy, Raster source) {
    int y = dy + source.getMinY();
    for (int i = 0; i < source.getHeight(); i++) {
      source.getDataElements(source.getMinX(), source.getMinY() + i, width, 1, line);
      put(y + i, line);
    }
  }

  /** Readers that set pixel by pixel do that row by row, too. */
  @Override
  public void setPixel(int x, int y, int[] samples) {
    if (y != pixelRow) {
      flush();
      pixelRow = y;
    }
    for (int band = 0; band < numBands; band++) {
      line[x * numBands + band] = (byte) samples[band];
    }
  }

  /** To be called after reading: the last row may still be here. */
  final void flush() {
    if (pixelRow >= 0) {
      put(pixelRow, line);
      pixelRow = -1;
    }
  }

  @Override
  public Raster createChild(int x, int y, int w, int h, int toX, int toY, int[] bands) {
    if (h != 1 || bands != null && bands.length != numBands) {
      throw new UnsupportedOperationException("rows are read one by one");
    }
    fetch(y, line);
    WritableRaster row =
        Raster.createInterleavedRaster(
            new DataBufferByte(line, line.length),
            width,
            1,
            line.length,
            numBands,
            offsets(numBands),
            new Point(toX - x, toY));
    return row.createChild(toX, toY, w, 1, toX, toY, null);
  }

  @Override
  public Object getDataElements(int x, int y, int w, int h, Object out) {
    byte[] pixels = out == null ? new byte[w * h * numBands] : (byte[]) out;
    Rectangle all = getBounds();
    if (!all.contains(x, y, w, h)) {
      throw new ArrayIndexOutOfBoundsException("no row " + y);
    }
    for (int i = 0; i < h; i++) {
      fetch(y + i, line);
      System.arraycopy(line, x * numBands, pixels, i * w * numBands, w * numBands);
    }
    return pixels;
  }

  private static int[] offsets(int bands) {
    int[] offsets = new int[bands];
    for (int i = 0; i < bands; i++) {
      offsets[i] = i;
    }
    return offsets;
  }
}
