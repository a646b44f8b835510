package org.coachskin.mesh;

/**
 * A part of a piece between two vertices of the mesh.
 *
 * @param a vertex where it starts
 * @param b vertex where it ends
 * @param root number of the piece
 * @param t0 where on the piece it starts
 * @param t1 where on the piece it ends
 */
record Segment(int a, int b, int root, double t0, double t1) {}
