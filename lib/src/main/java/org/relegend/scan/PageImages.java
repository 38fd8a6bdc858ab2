package org.relegend.scan;

import java.io.IOException;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.graphics.PDXObject;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.jspecify.annotations.Nullable;

/** The images that a page of a PDF uses. */
final class PageImages {
  /** How deep forms may lie in forms: enough for real files, and an end to circles. */
  private static final int DEEPEST = 4;

  private PageImages() {}

  /** Width in pixels of the widest image; 0 where there is none, or none that can be told. */
  static int widest(PDPage page) {
    return widest(page.getResources(), DEEPEST);
  }

  private static int widest(@Nullable PDResources resources, int depth) {
    int widest = 0;
    if (resources == null || depth == 0) {
      return widest;
    }
    for (COSName name : resources.getXObjectNames()) {
      widest = Math.max(widest, widest(resources, name, depth));
    }
    return widest;
  }

  private static int widest(PDResources resources, COSName name, int depth) {
    try {
      PDXObject object = resources.getXObject(name);
      if (object instanceof PDImageXObject image) {
        return image.getWidth();
      }
      return object instanceof PDFormXObject form ? widest(form.getResources(), depth - 1) : 0;
    } catch (IOException unreadable) {
      return 0; // rendering will tell; here it only means that nothing is averaged for it
    }
  }
}
