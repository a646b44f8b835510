/**
 * Plies stacked into a laminate, and what the stack answers.
 *
 * <p><b>Read in this order.</b> {@link org.coachskin.laminate.Ply} is one cured ply; {@link
 * org.coachskin.laminate.Layer} places a ply, a seal coat or the foam in a stack; {@link
 * org.coachskin.laminate.Laminate} is the stack, inside to outside; {@link
 * org.coachskin.laminate.Stiffness} is its A, B, D and transverse shear stiffness H (first-order
 * theory); {@link org.coachskin.laminate.LayeredStiffness} the same with the skins and the foam
 * turning by themselves (layered theory); {@link org.coachskin.laminate.SectionState} is what a
 * place of the panel does, and the way back to the strain of every layer; {@link
 * org.coachskin.laminate.LayerStress} and {@link org.coachskin.laminate.ShearThroughThickness} are
 * the stresses that follow.
 *
 * <p><b>Axes and signs.</b> x and y lie in the panel, z points outward, zero at mid-height of the
 * stack. Layers are listed from the inside surface to the outside surface. Angles run from x toward
 * y. Displacements in the plane are u = u0 + z &phi;, so a thin plate has &phi; = -grad w, the
 * transverse shear strain is &gamma; = &phi; + grad w and a positive curvature or moment stretches
 * the outside. Shear strains are engineering strains. Tension is positive.
 *
 * <p><b>Units.</b> SI: Pa, m, rad, N/m for forces per width and N for moments per width.
 */
@NullMarked
package org.coachskin.laminate;

import org.jspecify.annotations.NullMarked;
