package org.relegend.scan;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.FileImageInputStream;
import javax.imageio.stream.FileImageOutputStream;
import org.relegend.lineup.Extent;
import org.relegend.lineup.Rectification;
import org.relegend.lineup.Transform;
import org.relegend.lineup.WarpedPicture;
import org.relegend.map.Attestation;
import org.relegend.map.BoardMap;
import org.relegend.map.Edit;
import org.relegend.map.EditGroup;
import org.relegend.map.MapTables;
import org.relegend.map.Photo;
import org.relegend.map.PictureId;
import org.relegend.map.PicturePairs;
import org.relegend.map.PicturePairs.Origin;
import org.relegend.store.MapFolder;
import org.relegend.store.StoreException;

/**
 * A photo drawn anew with the board square on, as a further photo of the map that is lined up with
 * the first: what is placed on either shows on both.
 *
 * @param edit puts it into the map
 * @param picture its name there
 * @param view how it lies to the first
 */
public record StraightenedPhoto(EditGroup edit, PictureId picture, Rectification view) {
  /** Pixels of the first photo that are decoded; more would not be seen on the drawing. */
  private static final double MOST_DECODED = 40e6;

  private static final float QUALITY = 0.92f;

  /**
   * Draws it into the map's folder; until the edit is made, the map knows nothing of it.
   *
   * @param folder of the map
   * @param title what people call the new photo
   * @param says who clicked the corners
   * @throws PictureException where the photo can't be read or the new one can't be written; nothing
   *     is left in the folder then
   * @throws StoreException where it can't be read back
   * @throws CancellationException where the progress says so
   */
  public static StraightenedPhoto of(
      Path folder,
      BoardMap map,
      Photo photo,
      Rectification view,
      String title,
      Attestation says,
      Progress progress)
      throws PictureException, StoreException {
    Path source = folder.resolve(photo.file());
    BufferedImage drawn = drawn(PhotoFile.probe(source), view, progress);
    Path file = written(drawn, folder.resolve(MapFolder.PHOTOS));
    try {
      PictureIntake.Shown shown =
          new PictureIntake.Shown(title, photo.board(), photo.side(), photo.turn());
      EditGroup added =
          new PictureIntake(folder, map)
              .photo(file, shown, fraction -> progress.at(0.8 + 0.2 * fraction));
      List<Edit> steps = new ArrayList<>(added.steps());
      PictureId made = MapTables.PICTURES.putBy(steps).get(0).id();
      List<PicturePairs.Spot> spots =
          view.spots(Extent.of(photo.width(), photo.height())).stream()
              .map(pair -> new PicturePairs.Spot(pair.from(), pair.to()))
              .toList();
      steps.add(
          MapTables.LINE_UPS.put(
              new PicturePairs(made, photo.id(), Origin.AUTOMATIC, spots, List.of(says))));
      return new StraightenedPhoto(
          new EditGroup("Straighten " + photo.caption(), steps), made, view);
    } finally {
      file.toFile().delete();
    }
  }

  private static BufferedImage drawn(PhotoFile photo, Rectification view, Progress progress)
      throws PictureException {
    int step = (int) Math.ceil(Math.sqrt((double) photo.width() * photo.height() / MOST_DECODED));
    BufferedImage pixels = decoded(photo, step);
    if (!progress.at(0.5)) {
      throw new CancellationException("straightening was given up");
    }
    Transform toPixels = Transform.scale(1.0 / step).after(view.toPhoto());
    BufferedImage drawn = WarpedPicture.smooth(pixels, view.width(), view.height(), toPixels);
    if (!progress.at(0.8)) {
      throw new CancellationException("straightening was given up");
    }
    return drawn;
  }

  private static BufferedImage decoded(PhotoFile photo, int step) throws PictureException {
    ImageReader reader = PhotoFile.reader(photo.format());
    try (FileImageInputStream in = new FileImageInputStream(photo.path().toFile())) {
      reader.setInput(in, true, true);
      ImageReadParam how = reader.getDefaultReadParam();
      how.setSourceSubsampling(step, step, 0, 0);
      return reader.read(0, how);
    } catch (IOException | RuntimeException problem) {
      throw PhotoFile.damaged(photo.path(), problem);
    } finally {
      reader.dispose();
    }
  }

  private static Path written(BufferedImage drawn, Path folder) throws PictureException {
    Path file = folder.resolve(".straight.tmp");
    boolean done = false;
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    try {
      file = Files.createTempFile(folder, ".straight-", ".tmp");
      try (FileImageOutputStream out = new FileImageOutputStream(file.toFile())) {
        writer.setOutput(out);
        ImageWriteParam how = writer.getDefaultWriteParam();
        how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
        how.setCompressionQuality(QUALITY);
        writer.write(null, new IIOImage(drawn, null, null), how);
      }
      done = true;
      return file;
    } catch (IOException problem) {
      throw new PictureException(
          PictureException.Kind.NOT_WRITTEN,
          folder,
          "the straightened photo can't be written (%s)".formatted(problem.getMessage()),
          problem);
    } finally {
      writer.dispose();
      if (!done) {
        file.toFile().delete();
      }
    }
  }
}
