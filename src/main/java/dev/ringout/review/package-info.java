/** What is wrong on paper, with the published source of each rule. */
@NullMarked
package dev.ringout.review;

import org.jspecify.annotations.NullMarked;
