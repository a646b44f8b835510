package org.coachskin.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.coachskin.Source;
import org.coachskin.Standing;
import org.coachskin.check.Spread;
import org.coachskin.check.Verdict;
import org.coachskin.cli.report.Block;
import org.coachskin.laminate.PrimaryInput;
import org.coachskin.laminate.Schedule;
import org.coachskin.material.Cloth;
import org.coachskin.material.Foam;

/** What hand work and what was taken for granted move of the felt stiffness, the most on top. */
final class ScatterBlocks {

    private static final double TENTH = 0.1;

    private final Schedule schedule;
    private final Spread felt;
    private final Figures figures;

    private ScatterBlocks(Schedule schedule, Spread felt, Figures figures) {
        this.schedule = schedule;
        this.felt = felt;
        this.figures = figures;
    }

    /** Returns the blocks; none where nobody presses. */
    static List<Block> of(Verdict verdict, Figures figures) {
        return verdict.felt()
                .map(felt -> new ScatterBlocks(verdict.job().schedule(), felt, figures).blocks())
                .orElse(List.of());
    }

    /**
     * An input as it was taken.
     *
     * @param words what was taken
     * @param scatter one standard deviation in words
     * @param share the same as a share of what was taken [-]
     * @param source where it is from
     */
    private record Taken(String words, String scatter, double share, Source source) {}

    private List<Block> blocks() {
        double deviation = felt.deviation();
        List<Block.Bar> bars = new ArrayList<>();
        List<List<String>> rows = new ArrayList<>();
        felt.shares().entrySet().stream()
                .filter(share -> share.getValue() > 0.0005)
                .sorted(
                        Map.Entry.<PrimaryInput, Double>comparingByValue()
                                .reversed()
                                .thenComparing(Map.Entry.comparingByKey()))
                .forEach(
                        share -> {
                            double moves = deviation * Math.sqrt(share.getValue()) / felt.nominal();
                            String name = share.getKey().words();
                            bars.add(
                                    new Block.Bar(
                                            name,
                                            moves,
                                            figures.stiffness(moves * felt.nominal()),
                                            Figures.percent(moves),
                                            false));
                            taken(share.getKey())
                                    .ifPresent(taken -> rows.add(row(name, taken, moves)));
                        });
        return List.of(
                new Block.Bars(
                        "What of hand work moves the felt stiffness",
                        "Each by its usual scatter (one standard deviation). All together: eight panels of ten"
                                + " between "
                                + figures.stiffness(felt.low())
                                + " and "
                                + figures.stiffness(felt.high())
                                + " "
                                + figures.stiffnessName()
                                + ". Weigh and measure what stands on top.",
                        "+- " + figures.stiffnessName(),
                        Double.NaN,
                        "",
                        bars,
                        true),
                new Block.Rows(
                        "",
                        "10 % off: how far the felt stiffness is off if what was taken is.",
                        List.of("", "taken", "scatter", "10 % off", "where from"),
                        rows,
                        "",
                        true));
    }

    private static List<String> row(String name, Taken taken, double moves) {
        String tenth = taken.share() > 0 ? Figures.percent(moves * TENTH / taken.share()) : "";
        return List.of(
                name, taken.words(), "+- " + taken.scatter(), tenth, taken.source().toString());
    }

    private Optional<Taken> taken(PrimaryInput input) {
        Optional<Foam> foam = Optional.ofNullable(schedule.board()).map(Schedule.Board::foam);
        return switch (input) {
            case CLOTH_MASS -> cloth().map(this::mass);
            case GLASS_SHARE ->
                    Optional.of(
                            new Taken(
                                    Figures.percent(schedule.layUp().glassShare())
                                            + " of the weight",
                                    Figures.percent(schedule.layUp().spread()),
                                    schedule.layUp().spread() / schedule.layUp().glassShare(),
                                    schedule.layUp().source()));
            case FOAM_DENSITY ->
                    foam.map(
                            of ->
                                    new Taken(
                                            figures.density(of.density()),
                                            Figures.percent(of.densitySpread()),
                                            of.densitySpread(),
                                            of.source()));
            case FOAM_MODULUS ->
                    foam.map(
                            of ->
                                    new Taken(
                                            "G " + figures.stress(of.g()),
                                            Figures.percent(of.modulusSpread()),
                                            of.modulusSpread(),
                                            of.source()));
            case FOAM_THICKNESS -> Optional.ofNullable(schedule.board()).map(this::thickness);
            case SEAL_COAT ->
                    Optional.of(
                            new Taken(
                                    figures.cloth(
                                            Math.max(
                                                    schedule.sealCoat().outside(),
                                                    schedule.sealCoat().inside())),
                                    Figures.percent(schedule.sealCoat().spread()),
                                    schedule.sealCoat().spread(),
                                    schedule.sealCoat().source()));
            case STRENGTHS -> Optional.empty();
        };
    }

    private Optional<Cloth> cloth() {
        return Stream.concat(schedule.outside().stream(), schedule.inside().stream())
                .filter(Schedule.Wet.class::isInstance)
                .map(item -> ((Schedule.Wet) item).cloth())
                .findFirst();
    }

    private Taken mass(Cloth cloth) {
        return new Taken(
                figures.cloth(cloth.arealMass()),
                Figures.percent(cloth.massSpread()),
                cloth.massSpread(),
                cloth.source());
    }

    private Taken thickness(Schedule.Board board) {
        boolean usual = board.thicknessSpread() == Schedule.Board.USUAL_SPREAD;
        return new Taken(
                figures.size(board.thickness()),
                figures.fineSize(board.thicknessSpread()),
                board.thicknessSpread() / board.thickness(),
                usual
                        ? new Source(
                                "scatter after shaping and sanding", "", Standing.COMMON_PRACTICE)
                        : Source.YOURS);
    }
}
