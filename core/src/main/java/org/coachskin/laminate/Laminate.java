package org.coachskin.laminate;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.UnaryOperator;
import org.coachskin.material.Foam;

/**
 * A stack of layers, listed from the inside surface to the outside surface.
 *
 * @param layers at least one
 */
public record Laminate(List<Layer> layers) {

    /** Copies the list and checks that it is not empty. */
    public Laminate {
        layers = List.copyOf(layers);
        if (layers.isEmpty()) {
            throw new IllegalArgumentException("a laminate needs at least one layer");
        }
    }

    /** Returns a laminate of these layers, inside to outside. */
    public static Laminate of(Layer... layers) {
        return new Laminate(List.of(layers));
    }

    /** Returns this laminate turned over: what was its inside surface is its outside surface. */
    public Laminate turnedOver() {
        List<Layer> over = new ArrayList<>(layers);
        Collections.reverse(over);
        return new Laminate(over);
    }

    /** Returns this laminate with every foam changed. */
    public Laminate withFoam(UnaryOperator<Foam> change) {
        return new Laminate(
                layers.stream()
                        .map(
                                layer ->
                                        layer instanceof Layer.Core core
                                                ? new Layer.Core(
                                                        change.apply(core.foam()), core.thickness())
                                                : layer)
                        .toList());
    }

    /** Returns this laminate with the shear modulus of every foam times {@code factor}. */
    public Laminate withFoamShearTimes(double factor) {
        return withFoam(foam -> foam.withShearModulus(factor * foam.g()));
    }

    /** Returns the total thickness [m]. */
    public double thickness() {
        double sum = 0;
        for (Layer layer : layers) {
            sum += layer.thickness();
        }
        return sum;
    }

    /** Returns the mass per area [kg/m^2]. */
    public double mass() {
        double sum = 0;
        for (Layer layer : layers) {
            sum += layer.thickness() * layer.density();
        }
        return sum;
    }

    /** Returns z of the centre of mass, from mid-height of the stack [m]. */
    public double centreOfMass() {
        double moment = 0;
        double middle = -thickness() / 2;
        for (Layer layer : layers) {
            middle += layer.thickness() / 2;
            moment += layer.thickness() * layer.density() * middle;
            middle += layer.thickness() / 2;
        }
        return moment / mass();
    }

    /** Returns the rotary inertia per area about mid-height, &int; &rho; z^2 dz [kg]. */
    public double rotaryInertia() {
        double sum = 0;
        double middle = -thickness() / 2;
        for (Layer layer : layers) {
            double t = layer.thickness();
            middle += t / 2;
            sum += t * layer.density() * (middle * middle + t * t / 12);
            middle += t / 2;
        }
        return sum;
    }

    /** Returns z of the inside surface of layer {@code index}, from mid-height of the stack [m]. */
    public double bottom(int index) {
        double z = -thickness() / 2;
        for (int i = 0; i < index; i++) {
            z += layers.get(i).thickness();
        }
        return z;
    }

    /** Returns the index of the innermost foam layer, or -1 for a bare laminate. */
    public int innermostCore() {
        for (int i = 0; i < layers.size(); i++) {
            if (!layers.get(i).inSkin()) {
                return i;
            }
        }
        return -1;
    }

    /** Returns the index of the outermost foam layer, or -1 for a bare laminate. */
    public int outermostCore() {
        for (int i = layers.size() - 1; i >= 0; i--) {
            if (!layers.get(i).inSkin()) {
                return i;
            }
        }
        return -1;
    }

    /** Returns the layers of the skin on the inside, inside to outside; empty where bare. */
    public List<Layer> insideSkin() {
        return isBare() ? List.of() : layers.subList(0, innermostCore());
    }

    /** Returns the layers of the skin on the outside, inside to outside; empty where bare. */
    public List<Layer> outsideSkin() {
        return isBare() ? List.of() : layers.subList(outermostCore() + 1, layers.size());
    }

    /** Returns the thickness from skin to skin [m]; 0 where bare. */
    public double foamThickness() {
        double sum = 0;
        for (Layer layer :
                isBare()
                        ? List.<Layer>of()
                        : layers.subList(innermostCore(), outermostCore() + 1)) {
            sum += layer.thickness();
        }
        return sum;
    }

    /** Returns whether there is no foam in the stack. */
    public boolean isBare() {
        return innermostCore() < 0;
    }

    /** Returns whether there is foam but no skin on its inside. */
    public boolean hasNoInsideSkin() {
        return innermostCore() == 0;
    }

    /** Returns whether there is foam but no skin on its outside. */
    public boolean hasNoOutsideSkin() {
        return !isBare() && outermostCore() == layers.size() - 1;
    }
}
