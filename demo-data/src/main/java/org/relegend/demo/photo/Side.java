package org.relegend.demo.photo;

/** Which face of the board looks at the camera; the solder side is seen mirrored. */
public enum Side {
  COMPONENT,
  SOLDER
}
