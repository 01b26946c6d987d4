/**
 * Lessons as a small site that needs no server and no network: {@link io.github.heatswell.scenarios.lessonsite.LessonSite} is
 * where to begin.
 */
package io.github.heatswell.scenarios.lessonsite;
