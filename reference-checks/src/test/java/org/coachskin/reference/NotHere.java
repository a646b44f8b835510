package org.coachskin.reference;

import java.util.List;

/** Published cases that were looked at and cannot be answered yet, with the reason. */
final class NotHere {

    private record Case(String what, String source, String why) {}

    private static final String RIM =
            "panels here are rectangles carried along the whole rim: this edge cannot be given";

    private static final List<Case> CASES =
            List.of(
                    new Case(
                            "clamped plates: deflection, moments, frequencies, buckling",
                            "Timoshenko tables 35, 37; Mindlin plates; Leissa; Dawe and Roufaeil; Birger and Panovko",
                            RIM),
                    new Case(
                            "plates with free edges, corner supports, edge beams; cantilevers",
                            "Timoshenko tables 29, 47 to 49, art. 49; Barton; Harris",
                            RIM),
                    new Case(
                            "circular plates",
                            "Timoshenko arts. 16-19",
                            "panels here are rectangles"),
                    new Case(
                            "buckling in shear, with clamped or free edges",
                            "Timoshenko and Gere",
                            "one wave does not buckle by itself in shear; " + RIM),
                    new Case(
                            "roof under its weight, pinched cylinder",
                            "Scordelis and Lo; Fluegge",
                            "a deep shell, free edges or a closed ring: beyond shallow shell theory"),
                    new Case(
                            "snap-through of hinged roofs, two-bar truss",
                            "Sze, Liu and Lo",
                            "the load path of large deflections is not followed"),
                    new Case(
                            "large deflections of plates",
                            "Levy; Way and Chia",
                            "deflections here are small against the thickness"),
                    new Case(
                            "holes: stress factors, finite width, strength beside a hole",
                            "Kirsch; Howland; Lekhnitskii; Reissner; Whitney and Nuismer",
                            "panels here have no openings"),
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
