package org.coachskin.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.coachskin.cli.file.PanelFile;
import org.coachskin.laminate.Compliance;
import org.coachskin.laminate.EngineeringConstants;
import org.coachskin.laminate.Laminate;
import org.coachskin.laminate.Layer;
import org.coachskin.laminate.Ply;
import org.coachskin.laminate.Scatter;
import org.coachskin.laminate.Schedule;
import org.coachskin.laminate.Stiffness;
import org.coachskin.laminate.Sym2;
import org.coachskin.laminate.Sym3;
import org.coachskin.material.Foam;
import org.coachskin.material.Strength;

/** What a stack and its plies give, for the engineer. */
final class SchedulePage {

    private final String name;
    private final Schedule schedule;
    private final List<PanelFile.Turned> turned;
    private final Laminate laminate;
    private final Figures figures;
    private final Page page = new Page();

    SchedulePage(PanelFile.Laid laid, Figures figures) {
        name = laid.name();
        schedule = laid.schedule();
        turned = laid.turned();
        this.figures = figures;
        laminate = schedule.laminate();
    }

    String text() {
        page.ends(
                CheckPage.sentence(name),
                figures.fineSize(laminate.thickness())
                        + ", "
                        + figures.massPerArea(laminate.mass()));
        page.blank();
        layers();
        plies();
        foam();
        matrices();
        constants();
        return page.toString();
    }

    private void layers() {
        page.line("Layers, inside to outside");
        Page.Table table = new Page.Table("lrrr").row("", "thick", "angle", "mass");
        for (Layer layer : laminate.layers()) {
            table.row(
                    nameOf(layer),
                    figures.fineSize(layer.thickness()),
                    layer instanceof Layer.Laid laid
                            ? Figures.decimals(Math.toDegrees(laid.angle()), 1) + " deg"
                            : "",
                    figures.massPerArea(layer.thickness() * layer.density()));
        }
        page.table(table);
        for (PanelFile.Turned edge : turned) {
            page.wrap(
                    "  ",
                    2,
                    "Turn the "
                            + edge.skin().name().toLowerCase(Locale.ROOT)
                            + " skin round the raw foam: "
                            + edge.place()
                            + ".");
        }
        page.blank();
    }

    private static String nameOf(Layer layer) {
        if (layer instanceof Layer.Laid laid) {
            return laid.ply().name();
        }
        return layer instanceof Layer.Core core ? core.foam().name() + " foam" : "seal coat";
    }

    private void plies() {
        Map<String, Integer> seen = new LinkedHashMap<>();
        for (int i = 0; i < laminate.layers().size(); i++) {
            if (laminate.layers().get(i) instanceof Layer.Laid laid) {
                seen.putIfAbsent(laid.ply().name(), i);
            }
        }
        seen.forEach(this::ply);
    }

    private void ply(String plyName, int layer) {
        Ply ply = plyOf(laminate, layer);
        page.line(CheckPage.sentence(plyName) + ", cured, in its own directions");
        Page.Table table = new Page.Table("lrrl").row("", "", "+-", "");
        ply(table, layer, "thickness", figures.fineSize(ply.thickness()), Ply::thickness, "");
        ply(table, layer, "density", figures.density(ply.density()), Ply::density, "");
        ply(table, layer, "E1, along the warp", figures.stress(ply.e1()), Ply::e1, "");
        ply(table, layer, "E2, along the weft", figures.stress(ply.e2()), Ply::e2, "");
        ply(table, layer, "nu12", Figures.fixed(ply.nu12(), 3), Ply::nu12, "");
        ply(table, layer, "G12", figures.stress(ply.g12()), Ply::g12, "");
        ply(table, layer, "G13", figures.stress(ply.g13()), Ply::g13, "");
        ply(table, layer, "G23", figures.stress(ply.g23()), Ply::g23, "");
        strength(table, layer, "tension, warp", p -> p.strength().tension1());
        strength(table, layer, "compression, warp", p -> p.strength().compression1());
        strength(table, layer, "tension, weft", p -> p.strength().tension2());
        strength(table, layer, "compression, weft", p -> p.strength().compression2());
        strength(table, layer, "shear", p -> p.strength().shear12());
        page.table(table);
        page.wrap("  Constants: ", 4, ply.source().toString());
        page.wrap("  Strength: ", 4, ply.strength().tension1().source().toString());
        page.blank();
    }

    private void strength(
            Page.Table table, int layer, String label, Function<Ply, Strength> strength) {
        Strength value = strength.apply(plyOf(laminate, layer));
        ply(
                table,
                layer,
                label,
                figures.stress(value.value()),
                p -> strength.apply(p).value(),
                value.level().name().toLowerCase(Locale.ROOT)
                        + ", "
                        + value.event().name().toLowerCase(Locale.ROOT).replace('_', ' '));
    }

    private void ply(
            Page.Table table,
            int layer,
            String label,
            String shown,
            ToDoubleFunction<Ply> figure,
            String remark) {
        table.row(label, shown, scatter(s -> figure.applyAsDouble(plyOf(s, layer))), remark);
    }

    private static Ply plyOf(Laminate stack, int layer) {
        if (stack.layers().get(layer) instanceof Layer.Laid laid) {
            return laid.ply();
        }
        throw new IllegalArgumentException("layer " + layer + " is no ply");
    }

    /** One standard deviation as a share of the figure. */
    private String scatter(ToDoubleFunction<Laminate> figure) {
        double nominal = figure.applyAsDouble(laminate);
        double deviation = Scatter.deviation(schedule, s -> figure.applyAsDouble(s.laminate()));
        return nominal == 0 ? "" : Figures.percent(deviation / Math.abs(nominal));
    }

    private void foam() {
        Schedule.Board board = schedule.board();
        if (board == null) {
            return;
        }
        Foam foam = board.foam();
        page.line("Foam: " + foam.name() + ", " + figures.density(foam.density()));
        page.table(
                new Page.Table("lr")
                        .row("E along the board", figures.stress(foam.eInPlane()))
                        .row("E through the thickness", figures.stress(foam.eThrough()))
                        .row("shear modulus G", figures.stress(foam.g()))
                        .row("shear strength", figures.stress(foam.shear().value()))
                        .row("crushing strength", figures.stress(foam.crush().value()))
                        .row("tensile strength", figures.stress(foam.tension().value())));
        page.wrap("  From: ", 4, foam.source().toString());
        page.wrap(
                "  +-: ",
                4,
                "density "
                        + Figures.percent(foam.densitySpread())
                        + ", moduli beside that "
                        + Figures.percent(foam.modulusSpread())
                        + ", thickness "
                        + figures.fineSize(board.thicknessSpread()));
        page.blank();
    }

    private void matrices() {
        Stiffness s = Stiffness.of(laminate);
        page.line("Stiffness per width about mid-height, x from left, y from front (SI)");
        Page.Table table = new Page.Table("lrrrl");
        matrix(table, "A", s.a(), 1e6, "MN/m");
        matrix(table, "B", s.b(), 1e3, "kN");
        matrix(table, "D", s.d(), 1, "N m");
        Sym2 h = s.h();
        table.row("H", shown(h.m11() / 1e3), shown(h.m12() / 1e3), "", "kN/m  shear, xz and yz");
        table.row("", shown(h.m12() / 1e3), shown(h.m22() / 1e3), "", "");
        page.table(table);
        page.paragraph("A stretching, B coupling, D bending; rows and columns x, y, xy.").blank();
    }

    private static void matrix(Page.Table table, String letter, Sym3 m, double unit, String name) {
        table.row(
                letter, shown(m.m11() / unit), shown(m.m12() / unit), shown(m.m16() / unit), name);
        table.row("", shown(m.m12() / unit), shown(m.m22() / unit), shown(m.m26() / unit), "");
        table.row("", shown(m.m16() / unit), shown(m.m26() / unit), shown(m.m66() / unit), "");
    }

    private static String shown(double value) {
        return Math.abs(value) < 1e-9 ? "0" : Figures.significant(value, 4, 3);
    }

    private void constants() {
        EngineeringConstants in = EngineeringConstants.inPlane(laminate);
        EngineeringConstants bending = EngineeringConstants.inBending(laminate);
        page.line("One plain sheet of the same thickness would need");
        page.table(
                new Page.Table("lrr")
                        .row("", "stretched", "bent")
                        .row("E across (x)", figures.stress(in.ex()), figures.stress(bending.ex()))
                        .row("E along (y)", figures.stress(in.ey()), figures.stress(bending.ey()))
                        .row(
                                "shear, twist",
                                figures.stress(in.gxy()),
                                figures.stress(bending.gxy()))
                        .row(
                                "nuxy",
                                Figures.fixed(in.nuxy(), 3),
                                Figures.fixed(bending.nuxy(), 3)));
        Compliance free = Compliance.of(Stiffness.of(laminate));
        page.blank();
        page.line("The stack as laid, and how far hand work moves it (one standard deviation)");
        page.table(
                new Page.Table("lrr")
                        .row(
                                "bending stiffness 1/d11",
                                Figures.significant(1 / free.d().m11(), 3, 1) + " N m",
                                scatter(l -> 1 / Compliance.of(Stiffness.of(l)).d().m11()))
                        .row(
                                "shear stiffness H11",
                                Figures.significant(Stiffness.of(laminate).h().m11() / 1e3, 3, 1)
                                        + " kN/m",
                                scatter(l -> Stiffness.of(l).h().m11()))
                        .row("mass", figures.massPerArea(laminate.mass()), scatter(Laminate::mass))
                        .row(
                                "neutral axis above mid-height",
                                figures.fineSize(free.neutralAxisX()),
                                ""));
    }

    String json() {
        Stiffness s = Stiffness.of(laminate);
        Map<String, Object> json = Json.answer("schedule");
        json.put("panel", name);
        json.put("order", "layers from the inside to the outside; z outward from mid-height");
        json.put("layers", StackJson.layers(laminate));
        if (!turned.isEmpty()) {
            json.put("turned", turned.stream().map(SchedulePage::json).toList());
        }
        json.put("thickness", laminate.thickness());
        json.put("massPerArea", laminate.mass());
        json.put("a", StackJson.matrix(s.a()));
        json.put("b", StackJson.matrix(s.b()));
        json.put("d", StackJson.matrix(s.d()));
        json.put(
                "h", List.of(List.of(s.h().m11(), s.h().m12()), List.of(s.h().m12(), s.h().m22())));
        json.put("inPlane", constants(EngineeringConstants.inPlane(laminate)));
        json.put("inBending", constants(EngineeringConstants.inBending(laminate)));
        Compliance free = Compliance.of(s);
        json.put(
                "neutralAxis",
                new ArrayList<Object>(List.of(free.neutralAxisX(), free.neutralAxisY())));
        return Json.text(json);
    }

    private static Map<String, Object> json(PanelFile.Turned edge) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("place", edge.place());
        json.put("skin", edge.skin().name().toLowerCase(Locale.ROOT));
        return json;
    }

    private static Map<String, Object> constants(EngineeringConstants constants) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("ex", constants.ex());
        json.put("ey", constants.ey());
        json.put("gxy", constants.gxy());
        json.put("nuxy", constants.nuxy());
        return json;
    }
}
