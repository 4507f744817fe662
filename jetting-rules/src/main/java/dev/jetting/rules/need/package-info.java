/** How far a mixture is from what the engine needs. Not exported. */
package dev.jetting.rules.need;
