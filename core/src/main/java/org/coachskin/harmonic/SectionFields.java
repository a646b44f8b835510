package org.coachskin.harmonic;

import org.coachskin.laminate.Triple;

/**
 * What the fields at one place mean at a height of the section: strains, and how far it moves.
 * Heights are from mid-height of the stack. Immutable.
 */
public final class SectionFields {

    private final Kinematics kinematics;
    private final double curvatureX;
    private final double curvatureY;
    private final double[] fields;
    private final int second;
    private final int first;

    /**
     * Takes the fields of one place.
     *
     * @param curvatureX 1/Rx [1/m]
     * @param curvatureY 1/Ry [1/m]
     * @param fields as {@link SingleSeries#add} writes them; copied
     */
    public SectionFields(
            Kinematics kinematics, double curvatureX, double curvatureY, double[] fields) {
        this.kinematics = kinematics;
        this.curvatureX = curvatureX;
        this.curvatureY = curvatureY;
        this.fields = fields.clone();
        second = kinematics.inPlane;
        first = second + kinematics.deflections;
    }

    /** Returns how far height {@code z} moves outward [m]. */
    public double outward(double z) {
        double[] m = new double[kinematics.deflections];
        kinematics.deflection(z, m);
        return ofDeflections(m);
    }

    /** Returns the strain through the thickness, &epsilon;z [-]. */
    public double stretch(double z) {
        double[] dm = new double[kinematics.deflections];
        kinematics.stretch(z, dm);
        return ofDeflections(dm);
    }

    private double ofDeflections(double[] weights) {
        double sum = 0;
        for (int k = 0; k < weights.length; k++) {
            sum += weights[k] * fields[3 * (second + k)];
        }
        return sum;
    }

    /** Returns the strain in the plane, in panel axes [-]. */
    public Triple strain(double z) {
        double[] n = new double[second];
        kinematics.displacement(z, n);
        double w = outward(z);
        double x = curvatureX * w;
        double y = curvatureY * w;
        double xy = 0;
        for (int i = 0; i < second; i++) {
            int v = first + i;
            x += n[i] * fields[3 * i + 1];
            y += n[i] * fields[3 * v + 2];
            xy += n[i] * (fields[3 * i + 2] + fields[3 * v + 1]);
        }
        return new Triple(x, y, xy);
    }

    /** Returns the transverse shear strain &gamma;xz [-]. */
    public double shearX(double z) {
        return shear(z, 0, 1);
    }

    /** Returns the transverse shear strain &gamma;yz [-]. */
    public double shearY(double z) {
        return shear(z, first, 2);
    }

    private double shear(double z, int block, int derivative) {
        double[] dn = new double[second];
        double[] m = new double[kinematics.deflections];
        kinematics.rotation(z, dn);
        kinematics.deflection(z, m);
        // The value of a rotation is its shear strain, so its slope is in it already.
        double[] slope = new double[m.length];
        kinematics.slopeLeft(dn, m, slope);
        double sum = 0;
        for (int i = 0; i < second; i++) {
            sum += dn[i] * fields[3 * (block + i)];
        }
        for (int k = 0; k < m.length; k++) {
            sum += slope[k] * fields[3 * (second + k) + derivative];
        }
        return sum;
    }
}
