package org.coachskin.reference;

import java.util.List;

/** Published cases that were looked at and cannot be answered yet, with the reason. */
final class NotHere {

    private record Case(String what, String source, String why) {}

    private static final List<Case> CASES =
            List.of(
                    new Case(
                            "plates on edge beams",
                            "Timoshenko tables 47 and 49",
                            "an edge here is held rigidly or not at all: a beam along it would be a stiff strip of some width, with twist"),
                    new Case(
                            "other sides, part of the rim held, skew plates",
                            "Timoshenko; Leissa; Morley",
                            "not read yet"),
                    new Case(
                            "buckling in shear, with clamped or free edges",
                            "Timoshenko and Gere",
                            "one wave does not buckle by itself in shear; the finite elements do not look for buckling"),
                    new Case(
                            "roof under its weight",
                            "Scordelis and Lo",
                            "a deep shell: its weight pulls along the surface, and its edges rise 40 degrees"),
                    new Case("pinched cylinder", "Fluegge", "a closed ring, which no panel is"),
                    new Case(
                            "snap-through of hinged roofs, two-bar truss",
                            "Sze, Liu and Lo",
                            "the load path of large deflections is not followed"),
                    new Case(
                            "large deflections of plates",
                            "Levy; Way and Chia",
                            "deflections here are small against the thickness"),
                    new Case(
                            "tests of strength beside a hole",
                            "Whitney and Nuismer",
                            "their distances are two fits; no table of tests came to us"),
                    new Case(
                            "indentation of a beam under a roller, foam crushed, face in compression",
                            "Steeves and Fleck",
                            "a roller across a strip is no patch on a panel; the lasting dent here is that of a disc"),
                    new Case(
                            "count of fibres through a ply, hot and wet moduli",
                            "Chamis examples 3.1, 3.2, 8",
                            "not worked out: the plies of a cloth need neither, moisture is not asked for"),
                    new Case(
                            "1.195 times the thickness at 0.35 of glass",
                            "Lloyd's Register, Special Service Craft",
                            "a demand on strength, not a mass balance"),
                    new Case(
                            "acrylic and SAN foams, PVC of 250 kg/m^3",
                            "data sheets",
                            "the table of foams does not hold them"),
                    new Case(
                            "panels under pressure, columns, flatwise tests, holes in flexure",
                            "abstracts and theses",
                            "size or result is not printed where we could read it"));

    private NotHere() {}

    static EvidenceSection section() {
        Columns columns = new Columns("published cases", "where", "why they are not here");
        for (Case one : CASES) {
            columns.row(one.what, one.source, one.why);
        }
        return new EvidenceSection("Published cases that are not here", columns.text());
    }
}
