package weatherlap.sim.geometry;

/** One part of an opening, where it is seen. */
public record Piece(Part part, Rect rect) {}
