/**
 * The report as one page of HTML: pictures, sheets, templates. It is handed words and figures and
 * decides how they look; what the words are is up to the commands.
 */
@NullMarked
package org.coachskin.cli.report;

import org.jspecify.annotations.NullMarked;
