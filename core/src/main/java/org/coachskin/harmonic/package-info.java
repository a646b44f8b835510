/**
 * The stiffness of one sine wave of a panel in three theories: first order, layered, full layered.
 *
 * <p><b>Read in this order.</b> {@link org.coachskin.harmonic.Theory} names the theories; {@link
 * org.coachskin.harmonic.Kinematics} says how each lets the section move; {@link
 * org.coachskin.harmonic.WaveSystem} is the matrix that connects a wave of load to the wave of
 * every field; {@link org.coachskin.harmonic.SingleSeries} sums the waves.
 *
 * <p><b>Waves.</b> With &alpha; = m&pi;/a and &beta; = n&pi;/b every field along x is U cos
 * &alpha;x sin &beta;y, every field along y is V sin &alpha;x cos &beta;y and every deflection W
 * sin &alpha;x sin &beta;y. They satisfy the rim of {@link org.coachskin.harmonic.WaveSystem}:
 * deflection, displacement and rotation along each edge are zero, those at right angles to it are
 * free. Waves answer one by one where A16 = A26 = B16 = B26 = D16 = D26 = H12 = 0.
 *
 * <p><b>Crown.</b> Shallow shell: e<sub>x</sub> = u,x + w/R<sub>x</sub>, with w outward and a panel
 * that bulges outward having R above zero (Donnell-Mushtari-Vlasov; Vlasov, <i>General theory of
 * shells</i>, 1949; from memory). What it leaves out, u/R in the transverse shear strain, is 0.1
 * per cent of the deflection of a spherical panel with R = 5 sides and a side of 100 thicknesses,
 * and 0.75 per cent with a side of 10.
 */
@NullMarked
package org.coachskin.harmonic;

import org.jspecify.annotations.NullMarked;
