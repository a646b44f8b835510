package org.coachskin.cli;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/**
 * One subcommand: what it may be given, and what it answers. It reads, asks the library and prints;
 * nothing here calculates.
 */
interface Subcommand {

    /** Returns the options and arguments it takes. */
    CommandSpec spec();

    /** Returns the answer to what was given. */
    Outcome run(ParseResult given);

    /** Returns an option that is there or not. */
    static OptionSpec flag(String name) {
        return OptionSpec.builder(name).type(boolean.class).build();
    }

    /** Returns an option with a value, of which the last one given counts. */
    static OptionSpec option(String name, String value) {
        return OptionSpec.builder(name).type(String.class).paramLabel(value).build();
    }

    /** Returns a subcommand that takes these arguments and answers a person or a program. */
    static CommandSpec answering(PositionalParamSpec arguments) {
        return CommandSpec.create()
                .addOption(flag("--json"))
                .addOption(option("--units", "metric|us"))
                .addPositional(arguments);
    }

    /** Returns {@code least} to {@code most} arguments. */
    static PositionalParamSpec arguments(String label, String least, String most) {
        return PositionalParamSpec.builder()
                .type(String[].class)
                .paramLabel(label)
                .index(most.equals("1") ? "0" : "0..*")
                .required(!least.equals("0"))
                .arity(least + ".." + most)
                .build();
    }

    /** Returns what was given as arguments. */
    static String[] argumentsOf(ParseResult given) {
        return given.matchedPositionalValue(0, new String[0]);
    }
}
