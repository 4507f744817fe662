/** What the numbers of sheets, catalogues and kits may be. Not exported. */
package dev.jetting.rules.ranges;
