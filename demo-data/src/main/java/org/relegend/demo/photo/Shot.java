package org.relegend.demo.photo;

import org.relegend.demo.part.Specimen;

/**
 * One photo to be taken: of which board and side, from where, in which light, with which faults.
 *
 * @param boardThere false for a picture of the bench alone
 */
public record Shot(
    Specimen specimen,
    Side side,
    Camera camera,
    BoardLook look,
    Lighting light,
    Finish finish,
    Bench bench,
    boolean boardThere,
    long seed) {
  public Shot with(Camera other) {
    return new Shot(specimen, side, other, look, light, finish, bench, boardThere, seed);
  }

  public Shot with(Finish other) {
    return new Shot(specimen, side, camera, look, light, other, bench, boardThere, seed);
  }

  public Shot with(BoardLook other) {
    return new Shot(specimen, side, camera, other, light, finish, bench, boardThere, seed);
  }

  public Shot with(Lighting other) {
    return new Shot(specimen, side, camera, look, other, finish, bench, boardThere, seed);
  }

  public Shot with(Specimen other) {
    return new Shot(other, side, camera, look, light, finish, bench, boardThere, seed);
  }

  public Shot withSeed(long other) {
    return new Shot(specimen, side, camera, look, light, finish, bench, boardThere, other);
  }

  public Shot withoutBoard() {
    return new Shot(specimen, side, camera, look, light, finish, bench, false, seed);
  }
}
