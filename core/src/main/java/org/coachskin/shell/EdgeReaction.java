package org.coachskin.shell;

import org.coachskin.panel.Edge;

/**
 * What a held edge does to the panel at one place. Many such places, each standing for a length of
 * rim, are what holds it; force times length, and moment times length, add up to what balances the
 * loads.
 *
 * @param side the side of the panel it lies on
 * @param x of the place, from the left edge [m]
 * @param y of the place, from the front edge [m]
 * @param normalX outward normal of the edge, in the plane of the panel [-]
 * @param normalY outward normal [-]
 * @param length of rim it stands for [m]
 * @param forceX on the panel, from left to right [N/m]
 * @param forceY on the panel, from front to rear [N/m]
 * @param forceZ on the panel, outward [N/m]
 * @param bending moment on the cut along the edge about mid-height, positive where it stretches the
 *     outside [N]
 * @param twisting moment on the same cut, along the edge: Mxy on an edge on the right [N]
 */
public record EdgeReaction(
        Edge side,
        double x,
        double y,
        double normalX,
        double normalY,
        double length,
        double forceX,
        double forceY,
        double forceZ,
        double bending,
        double twisting) {}
