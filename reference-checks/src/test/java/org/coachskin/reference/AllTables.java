package org.coachskin.reference;

import java.util.ArrayList;
import java.util.List;

/** Everything on the evidence page, in the order in which it stands there. */
final class AllTables {

    private AllTables() {}

    static List<PublishedTable> all() {
        List<PublishedTable> all = new ArrayList<>();
        all.addAll(MaterialTables.all());
        all.addAll(LaminateTables.all());
        all.addAll(FailureTables.all());
        all.addAll(PlateTables.all());
        all.addAll(ShellTables.all());
        all.addAll(ElasticityTables.all());
        return all;
    }

    static List<EvidenceSection> sections() {
        List<EvidenceSection> sections = new ArrayList<>();
        sections.addAll(MaterialTables.sections());
        sections.addAll(FailureTables.sections());
        sections.addAll(ElasticityTables.sections());
        sections.addAll(ShellTables.sections());
        sections.add(NotHere.section());
        return sections;
    }
}
