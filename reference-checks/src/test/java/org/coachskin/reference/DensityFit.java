package org.coachskin.reference;

import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.coachskin.material.Foam;
import org.coachskin.material.FoamLaw;
import org.coachskin.material.MaterialLibrary;

/**
 * A power of the density fitted to the rows of a table of foam.
 *
 * @param power by least squares in the logarithms [-]
 * @param scatter standard deviation of the rows about it, relative [-]
 * @param worst largest distance of a row from a line of the power used, relative [-]
 */
record DensityFit(double power, double scatter, double worst) {

    static DensityFit of(List<Foam> rows, ToDoubleFunction<Foam> property, double used) {
        int n = rows.size();
        double[] x = rows.stream().mapToDouble(foam -> Math.log(foam.density())).toArray();
        double[] y =
                rows.stream().mapToDouble(foam -> Math.log(property.applyAsDouble(foam))).toArray();
        double mx = mean(x);
        double my = mean(y);
        double xx = 0;
        double xy = 0;
        for (int i = 0; i < n; i++) {
            xx += (x[i] - mx) * (x[i] - mx);
            xy += (x[i] - mx) * (y[i] - my);
        }
        double power = xy / xx;
        double squares = 0;
        double worst = 0;
        for (int i = 0; i < n; i++) {
            double off = y[i] - my - power * (x[i] - mx);
            squares += off * off;
            worst = Math.max(worst, Math.abs(Math.expm1(my + used * (x[i] - mx) - y[i])));
        }
        return new DensityFit(power, Math.sqrt(squares / (n - 2)), worst);
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.length;
    }

    /** Returns the rows of one source: urethane, or the PVC of one maker's sheet. */
    static List<Foam> rows(Foam.Kind kind) {
        return MaterialLibrary.standard().foams(kind).stream()
                .filter(foam -> kind != Foam.Kind.PVC || foam.density() != 80)
                .toList();
    }

    static String table() {
        StringBuilder text =
                new StringBuilder(
                        """
                | foam | constant | rows | power | scatter | power used | worst |
                |---|---|---|---|---|---|---|
                """);
        for (Foam.Kind kind : List.of(Foam.Kind.POLYURETHANE, Foam.Kind.PVC)) {
            FoamLaw.Powers p = FoamLaw.powers(kind);
            String name = kind == Foam.Kind.PVC ? "PVC" : "urethane";
            line(text, kind, name, "E through", p.moduli(), Foam::eThrough);
            line(text, kind, name, "G", p.moduli(), Foam::g);
            line(text, kind, name, "shear strength", p.shear(), foam -> foam.shear().value());
            line(text, kind, name, "crush strength", p.crush(), foam -> foam.crush().value());
            line(text, kind, name, "tensile strength", p.tension(), foam -> foam.tension().value());
        }
        return text.toString();
    }

    private static void line(
            StringBuilder text,
            Foam.Kind kind,
            String name,
            String constant,
            double used,
            ToDoubleFunction<Foam> property) {
        List<Foam> rows = rows(kind);
        DensityFit fit = of(rows, property, used);
        text.append(
                String.format(
                        Locale.ROOT,
                        "| %s | %s | %d | %.2f | %.0f %% | %.2f | %.0f %% |%n",
                        name,
                        constant,
                        rows.size(),
                        fit.power,
                        100 * fit.scatter,
                        used,
                        100 * fit.worst));
    }
}
