"""What words tell of the lengths and angles of roofs, frames, corners and what holds them, one after the other."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from intents.another_wall import another_wall
from intents.arc_told import arc_told
from intents.at_a_stud import at_a_stud, counted_in_whole
from intents.backwards_slope import backwards_slope, rafter_and_run, slope_for
from intents.balusters_told import balusters_told
from intents.bare_corner import bare_corner
from intents.bare_pitch import bare_pitch
from intents.bay_told import bay_of_sides, turns_so_far
from intents.chart import Chart
from intents.conversion_told import conversion_told
from intents.corner_told import corner_by_square, edge_told, how_set, out_by, parts_of_corner, setting_told, to_each_other
from intents.count_is_size import count_is_size, no_polygon
from intents.counted_things import gaps_counted, how_many_in
from intents.crown_told import crown_told, leaning_sides
from intents.dew_at import dew_at
from intents.diagonal_told import diagonal_told
from intents.each_leg import each_leg
from intents.fastener_told import bite_asked
from intents.feet_of_buildings import feet_of_buildings
from intents.from_each_end import from_each_end
from intents.gable_and_wall import gable_and_wall, no_gable_named
from intents.half_round import circle_area, half_round
from intents.held_in import length_rather
from intents.hips_told import hip_backwards
from intents.labels_first import labels_first
from intents.ladder_told import foot_told
from intents.leaning_told import leaning_told
from intents.legs_counted import legs_counted, long_as_it_is, none_out_of, on_each_edge
from intents.lineal_told import lineal_told
from intents.loads_told import loads_told
from intents.money_sums import money_sums
from intents.no_use import no_use
from intents.not_its_answer import not_its_answer
from intents.penetration_told import penetration_rather
from intents.pitch_after_at import pitch_after_at
from intents.pitch_of_grade import pitch_of_grade
from intents.question import Question
from intents.range_told import range_told
from intents.rates_told import rate_done
from intents.roof_by_heights import roof_by_heights
from intents.roof_plan import roof_plan
from intents.roof_told import roof_rather
from intents.rounded_told import rounded_rather
from intents.said_anyway import said_anyway
from intents.sealed_round import sealed_round
from intents.sheets_told import sheets_told
from intents.so_often import so_often
from intents.three_four_five import three_four_five
from intents.told_by_topic import told_by_topic
from intents.triangle_told import legs_told, out_and_up
from intents.two_ends import two_ends
from intents.two_tellers import two_tellers
from intents.up_the_slope import up_the_slope
from intents.wall_long import wall_long
from intents.wall_side import wall_side

_WORKS = (
    each_leg, labels_first, diagonal_told, three_four_five, backwards_slope, rafter_and_run, slope_for, hip_backwards,
    pitch_of_grade, half_round, arc_told, out_and_up, legs_told, leaning_told, roof_by_heights, setting_told, edge_told,
    corner_by_square, how_set, out_by, parts_of_corner, to_each_other, turns_so_far, bay_of_sides, bare_pitch, bare_corner,
    crown_told, leaning_sides, length_rather, roof_plan, roof_rather, wall_side, range_told, count_is_size, no_polygon,
    up_the_slope, legs_counted, conversion_told, money_sums, loads_told, no_use, gable_and_wall, said_anyway, lineal_told,
    pitch_after_at, two_tellers, counted_in_whole, at_a_stud, so_often, another_wall, from_each_end, sheets_told, foot_told,
    bite_asked, gaps_counted, how_many_in, none_out_of, on_each_edge, long_as_it_is, no_gable_named, wall_long,
    feet_of_buildings, two_ends, sealed_round, circle_area, balusters_told, rate_done, dew_at, rounded_rather,
    penetration_rather, told_by_topic, not_its_answer,
)  # fmt: skip


def roofs_and_frames(chart: Chart, questions: list[Question], topics: Mapping[str, Any]) -> None:
    """Give lengths the places that the words beside them tell."""
    for work in _WORKS:
        work(chart, questions, topics)
