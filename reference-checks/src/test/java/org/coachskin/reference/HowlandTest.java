package org.coachskin.reference;

import org.coachskin.analysis.Response;

class HowlandTest extends ShellTable {

    HowlandTest() {
        super("howland");
        for (int tenths = 1; tenths <= 5; tenths++) {
            differs(
                    "d/W=0." + tenths,
                    StripByHand.beside(tenths / 10.0),
                    "potentials fitted to the rim give ours; the print is 0.1 to 0.6 per cent low.");
        }
    }

    @Override
    void solve() {
        for (int tenths = 1; tenths <= 5; tenths++) {
            double width = HoleTest.HOLE * 10 / tenths;
            Response sheet = HoleTest.bent(isotropic(0.3, THIN, HoleTest.SLACK), width);
            put("d/W=0." + tenths, HoleTest.beside(sheet, width));
        }
    }

    @Override
    String title() {
        return "A round hole in a strip: stress at its rim";
    }

    @Override
    String remark() {
        return "The sheets are the layers of a plate that gives in shear without end, each in plane stress.";
    }
}
