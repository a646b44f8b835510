package org.coachskin.reference;

import org.coachskin.laminate.Ply;
import org.coachskin.laminate.Stiffness;

class GibsonLaminateTest extends StackTable {

    GibsonLaminateTest() {
        super("gibson");
        Ply ply = ply(138, 9.0, 0.3, 6.9, 0.25);
        put("Q", ply.stiffness(0), 1);
        put("Qbar", ply.stiffness(Math.PI / 4), 1);
        Stiffness s = Stiffness.of(stack(ply, 45, -45, -45, 45));
        put("A", s.a(), 1);
        put("D", s.d(), 1);
    }

    @Override
    String title() {
        return "A balanced symmetric laminate of angle plies: classical laminate theory";
    }
}
