"""A template, compiled by Jinja. Written by ``make records``; not to be edited."""

# ruff: noqa
# mypy: ignore-errors

from jinja2.runtime import LoopContext, Macro, Markup, Namespace, TemplateNotFound, TemplateReference, TemplateRuntimeError, Undefined, escape, identity, internalcode, markup_join, missing, str_join
name = 'parts.html'

def root(context, missing=missing):
    resolve = context.resolve_or_missing
    undefined = environment.undefined
    concat = environment.concat
    cond_expr_undefined = Undefined
    if 0: yield None
    l_0_doc = resolve('doc')
    l_0_heading = resolve('heading')
    l_0_swatch = l_0_listed = l_0_finished_table = l_0_chart_note = l_0_charted = missing
    try:
        t_1 = environment.filters['boxes']
    except KeyError:
        @internalcode
        def t_1(*unused):
            raise TemplateRuntimeError("No filter named 'boxes' found.")
    try:
        t_2 = environment.filters['charts_apart']
    except KeyError:
        @internalcode
        def t_2(*unused):
            raise TemplateRuntimeError("No filter named 'charts_apart' found.")
    try:
        t_3 = environment.filters['colours']
    except KeyError:
        @internalcode
        def t_3(*unused):
            raise TemplateRuntimeError("No filter named 'colours' found.")
    try:
        t_4 = environment.filters['cut']
    except KeyError:
        @internalcode
        def t_4(*unused):
            raise TemplateRuntimeError("No filter named 'cut' found.")
    try:
        t_5 = environment.filters['dir_of']
    except KeyError:
        @internalcode
        def t_5(*unused):
            raise TemplateRuntimeError("No filter named 'dir_of' found.")
    try:
        t_6 = environment.filters['drawing']
    except KeyError:
        @internalcode
        def t_6(*unused):
            raise TemplateRuntimeError("No filter named 'drawing' found.")
    try:
        t_7 = environment.filters['halves']
    except KeyError:
        @internalcode
        def t_7(*unused):
            raise TemplateRuntimeError("No filter named 'halves' found.")
    try:
        t_8 = environment.filters['hang']
    except KeyError:
        @internalcode
        def t_8(*unused):
            raise TemplateRuntimeError("No filter named 'hang' found.")
    try:
        t_9 = environment.filters['join']
    except KeyError:
        @internalcode
        def t_9(*unused):
            raise TemplateRuntimeError("No filter named 'join' found.")
    try:
        t_10 = environment.filters['kept_together']
    except KeyError:
        @internalcode
        def t_10(*unused):
            raise TemplateRuntimeError("No filter named 'kept_together' found.")
    try:
        t_11 = environment.filters['length']
    except KeyError:
        @internalcode
        def t_11(*unused):
            raise TemplateRuntimeError("No filter named 'length' found.")
    try:
        t_12 = environment.filters['list']
    except KeyError:
        @internalcode
        def t_12(*unused):
            raise TemplateRuntimeError("No filter named 'list' found.")
    try:
        t_13 = environment.filters['measures']
    except KeyError:
        @internalcode
        def t_13(*unused):
            raise TemplateRuntimeError("No filter named 'measures' found.")
    try:
        t_14 = environment.filters['pairs']
    except KeyError:
        @internalcode
        def t_14(*unused):
            raise TemplateRuntimeError("No filter named 'pairs' found.")
    try:
        t_15 = environment.filters['reads_first']
    except KeyError:
        @internalcode
        def t_15(*unused):
            raise TemplateRuntimeError("No filter named 'reads_first' found.")
    try:
        t_16 = environment.filters['safe']
    except KeyError:
        @internalcode
        def t_16(*unused):
            raise TemplateRuntimeError("No filter named 'safe' found.")
    try:
        t_17 = environment.filters['selectattr']
    except KeyError:
        @internalcode
        def t_17(*unused):
            raise TemplateRuntimeError("No filter named 'selectattr' found.")
    try:
        t_18 = environment.filters['shade_columns']
    except KeyError:
        @internalcode
        def t_18(*unused):
            raise TemplateRuntimeError("No filter named 'shade_columns' found.")
    try:
        t_19 = environment.filters['soft']
    except KeyError:
        @internalcode
        def t_19(*unused):
            raise TemplateRuntimeError("No filter named 'soft' found.")
    try:
        t_20 = environment.filters['strand_column']
    except KeyError:
        @internalcode
        def t_20(*unused):
            raise TemplateRuntimeError("No filter named 'strand_column' found.")
    try:
        t_21 = environment.filters['tagged']
    except KeyError:
        @internalcode
        def t_21(*unused):
            raise TemplateRuntimeError("No filter named 'tagged' found.")
    try:
        t_22 = environment.filters['tens']
    except KeyError:
        @internalcode
        def t_22(*unused):
            raise TemplateRuntimeError("No filter named 'tens' found.")
    try:
        t_23 = environment.filters['ticks']
    except KeyError:
        @internalcode
        def t_23(*unused):
            raise TemplateRuntimeError("No filter named 'ticks' found.")
    pass
    def macro(l_1_values):
        t_24 = []
        if l_1_values is missing:
            l_1_values = undefined("parameter 'values' was not provided", name='values')
        pass
        if t_3(l_1_values):
            pass
            t_24.append(
                '<span class="swatch" aria-hidden="true">',
            )
            for l_2_value in t_3(l_1_values):
                _loop_vars = {}
                pass
                t_24.extend((
                    '<span style="background:',
                    escape(l_2_value),
                    '"></span>',
                ))
            l_2_value = missing
            t_24.append(
                '</span>',
            )
        return concat(t_24)
    context.exported_vars.add('swatch')
    context.vars['swatch'] = l_0_swatch = Macro(environment, macro, 'swatch', ('values',), False, False, False, context.eval_ctx.autoescape)
    def macro(l_1_name, l_1_items, l_1_class):
        t_25 = []
        if l_1_name is missing:
            l_1_name = undefined("parameter 'name' was not provided", name='name')
        if l_1_items is missing:
            l_1_items = undefined("parameter 'items' was not provided", name='items')
        if l_1_class is missing:
            l_1_class = ''
        pass
        if l_1_items:
            pass
            t_25.extend((
                '<section class="',
                escape(l_1_name),
                escape((' ' if l_1_class else cond_expr_undefined("the inline if-expression on line 8 in 'parts.html' evaluated to false and no else section was defined."))),
                escape(l_1_class),
                '">\n<h2 id="',
                escape(l_1_name),
                '">',
                escape(environment.getitem((undefined(name='heading') if l_0_heading is missing else l_0_heading), l_1_name)),
                '</h2>\n',
            ))
            for l_2_item in l_1_items:
                l_2_web = resolve('web')
                _loop_vars = {}
                pass
                t_25.extend((
                    '<p',
                    escape(t_5(l_2_item)),
                    '>',
                    escape(t_13(l_2_item, (undefined(name='web') if l_2_web is missing else l_2_web))),
                    '</p>\n',
                ))
            l_2_item = l_2_web = missing
            t_25.append(
                '</section>\n',
            )
        return concat(t_25)
    context.exported_vars.add('listed')
    context.vars['listed'] = l_0_listed = Macro(environment, macro, 'listed', ('name', 'items', 'class'), False, False, False, context.eval_ctx.autoescape)
    def macro():
        t_26 = []
        pass
        t_26.extend((
            '<section class="finished">\n<h2 id="finished">',
            escape(environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'finished')),
            '</h2>\n<div class="wide" role="region" aria-labelledby="finished" tabindex="0">\n<table',
            escape((Markup(' class="stacks"') if ((t_11(environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'finished'), 'head')) > 3) and environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'sizes')) else cond_expr_undefined("the inline if-expression on line 20 in 'parts.html' evaluated to false and no else section was defined."))),
            '>\n',
        ))
        if environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'finished'), 'caption'):
            pass
            t_26.extend((
                '<caption>',
                escape(environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'finished'), 'caption')),
                '</caption>\n',
            ))
        t_26.append(
            '<thead><tr>',
        )
        for l_2_cell in environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'finished'), 'head'):
            l_2_web = resolve('web')
            _loop_vars = {}
            pass
            t_26.extend((
                '<th scope="col">',
                escape(t_13(t_19(l_2_cell), (undefined(name='web') if l_2_web is missing else l_2_web))),
                '</th>',
            ))
        l_2_cell = l_2_web = missing
        t_26.append(
            '</tr></thead>\n<tbody>\n',
        )
        l_2_loop = missing
        for l_2_row, l_2_loop in LoopContext(environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'finished'), 'rows'), undefined):
            _loop_vars = {}
            pass
            t_26.append(
                '<tr>',
            )
            l_3_loop = missing
            for l_3_cell, l_3_loop in LoopContext(l_2_row, undefined):
                l_3_web = resolve('web')
                _loop_vars = {}
                pass
                if (environment.getattr(l_3_loop, 'first') and environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'sizes')):
                    pass
                    t_26.extend((
                        '<th scope="row">',
                        escape(t_13(t_19(l_3_cell), (undefined(name='web') if l_3_web is missing else l_3_web))),
                        '</th>',
                    ))
                else:
                    pass
                    t_26.append(
                        '<td',
                    )
                    if (undefined(name='web') if l_3_web is missing else l_3_web):
                        pass
                        t_26.extend((
                            ' data-label="',
                            escape(environment.getitem(environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'finished'), 'head'), environment.getattr(l_3_loop, 'index0'))),
                            '"',
                        ))
                    t_26.extend((
                        '>',
                        escape(t_13(t_19(l_3_cell), (undefined(name='web') if l_3_web is missing else l_3_web))),
                        '</td>',
                    ))
            l_3_loop = l_3_cell = l_3_web = missing
            t_26.append(
                '</tr>\n',
            )
        l_2_loop = l_2_row = missing
        t_26.append(
            '</tbody>\n</table>\n</div>\n</section>\n',
        )
        return concat(t_26)
    context.exported_vars.add('finished_table')
    context.vars['finished_table'] = l_0_finished_table = Macro(environment, macro, 'finished_table', (), False, False, False, context.eval_ctx.autoescape)
    def macro():
        t_27 = []
        pass
        t_27.extend((
            escape((environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'chart_note') if t_12(context.eval_ctx, t_17(context, environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'charts'), 'sided')) else environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'chart_note_round'))),
            escape((markup_join((' ', environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'chart_frame'), )) if t_12(context.eval_ctx, t_17(context, environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'charts'), 'framed')) else cond_expr_undefined("the inline if-expression on line 35 in 'parts.html' evaluated to false and no else section was defined."))),
        ))
        return concat(t_27)
    context.exported_vars.add('chart_note')
    context.vars['chart_note'] = l_0_chart_note = Macro(environment, macro, 'chart_note', (), False, False, False, context.eval_ctx.autoescape)
    def macro(l_1_chart, l_1_number, l_1_level, l_1_explained):
        t_28 = []
        l_1_web = resolve('web')
        if l_1_chart is missing:
            l_1_chart = undefined("parameter 'chart' was not provided", name='chart')
        if l_1_number is missing:
            l_1_number = undefined("parameter 'number' was not provided", name='number')
        if l_1_level is missing:
            l_1_level = undefined("parameter 'level' was not provided", name='level')
        if l_1_explained is missing:
            l_1_explained = False
        pass
        t_28.extend((
            '<div class="charted',
            escape((' wide-chart' if environment.getattr(l_1_chart, 'wide') else cond_expr_undefined("the inline if-expression on line 38 in 'parts.html' evaluated to false and no else section was defined."))),
            escape((' long-chart' if (t_11(environment.getattr(l_1_chart, 'strips')) > 1) else cond_expr_undefined("the inline if-expression on line 38 in 'parts.html' evaluated to false and no else section was defined."))),
            '"',
        ))
        if (undefined(name='web') if l_1_web is missing else l_1_web):
            pass
            t_28.extend((
                ' data-motif="',
                escape(environment.getattr(l_1_chart, 'motif')),
                '"',
            ))
        t_28.extend((
            '>\n<h',
            escape(l_1_level),
            ' class="chart-title" id="chart-',
            escape(l_1_number),
            '">',
            escape(environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'chart')),
            escape(environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'colon')),
            ' ',
            escape(environment.getattr(l_1_chart, 'title')),
            '</h',
            escape(l_1_level),
            '>\n',
        ))
        if l_1_explained:
            pass
            t_28.extend((
                '<p class="quiet reading">',
                escape(context.call((undefined(name='chart_note') if l_0_chart_note is missing else l_0_chart_note))),
                '</p>\n',
            ))
        t_28.extend((
            '<div class="with-key">\n<div class="strips" role="region" aria-labelledby="chart-',
            escape(l_1_number),
            '" tabindex="0">\n',
        ))
        for (l_2_part, l_2_strip) in environment.getattr(l_1_chart, 'strips'):
            _loop_vars = {}
            pass
            t_28.append(
                '<div class="strip">',
            )
            if l_2_part:
                pass
                t_28.extend((
                    '<p class="quiet">',
                    escape(l_2_part),
                    '</p>',
                ))
            t_28.extend((
                escape(t_6(l_2_strip)),
                '</div>\n',
            ))
        l_2_part = l_2_strip = missing
        t_28.extend((
            '</div>\n<div class="key">\n<table>\n<thead><tr><th scope="col">',
            escape(environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'symbol')),
            '</th>',
        ))
        if environment.getattr(l_1_chart, 'sided'):
            pass
            t_28.extend((
                '<th scope="col">',
                escape(environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'rs')),
                '</th><th scope="col">',
                escape(environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'ws')),
                '</th>',
            ))
        else:
            pass
            t_28.extend((
                '<th scope="col">',
                escape(environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'meaning')),
                '</th>',
            ))
        t_28.append(
            '</tr></thead>\n<tbody>\n',
        )
        for l_2_line in environment.getattr(l_1_chart, 'key'):
            _loop_vars = {}
            pass
            t_28.extend((
                '<tr><td>',
                escape(t_6(environment.getattr(l_2_line, 'svg'))),
                '</td>',
            ))
            if (not environment.getattr(l_1_chart, 'sided')):
                pass
                t_28.extend((
                    '<td>',
                    escape((environment.getattr(l_2_line, 'rs') or environment.getattr(l_2_line, 'ws'))),
                    '</td>',
                ))
            elif ((environment.getattr(l_2_line, 'rs') == environment.getattr(l_2_line, 'ws')) or (t_11(environment.getattr(l_2_line, 'rs')) > 40)):
                pass
                t_28.extend((
                    '<td colspan="2">',
                    escape(environment.getattr(l_2_line, 'rs')),
                    '</td>',
                ))
            else:
                pass
                t_28.extend((
                    '<td>',
                    escape((environment.getattr(l_2_line, 'rs') or '–')),
                    '</td><td>',
                    escape((environment.getattr(l_2_line, 'ws') or '–')),
                    '</td>',
                ))
            t_28.append(
                '</tr>\n',
            )
        l_2_line = missing
        t_28.append(
            '</tbody>\n</table>\n</div>\n</div>\n</div>\n',
        )
        return concat(t_28)
    context.exported_vars.add('charted')
    context.vars['charted'] = l_0_charted = Macro(environment, macro, 'charted', ('chart', 'number', 'level', 'explained'), False, False, False, context.eval_ctx.autoescape)
    yield '<div class="front'
    yield escape((' pictured' if environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'cloth') else cond_expr_undefined("the inline if-expression on line 62 in 'parts.html' evaluated to false and no else section was defined.")))
    yield '">\n<div class="told">\n<header class="cover">\n<h1'
    yield escape(t_5(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'title')))
    yield ' data-short="'
    yield escape(t_4(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'title'), 48))
    yield '">'
    yield escape(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'title'))
    yield '</h1>\n'
    if environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'designer'):
        pass
        yield '<p class="designer">'
        yield escape(environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'by'))
        yield ' '
        yield escape(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'designer'))
        yield '</p>\n'
    if environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'summary'):
        pass
        yield '<p class="summary"'
        yield escape(t_5(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'summary')))
        yield '>'
        yield escape(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'summary'))
        yield '</p>\n'
    if (environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'level') or environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'sizes')):
        pass
        yield '<p class="keys">\n'
        if environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'level'):
            pass
            yield '<span class="key"><b>'
            yield escape(environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'level'))
            yield '</b> '
            yield escape(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'level'))
            yield '</span>\n'
        if environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'sizes'):
            pass
            yield '<span class="key"><b>'
            yield escape(environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'sizes'))
            yield '</b> <span class="sizes" data-short="'
            yield escape(t_4(t_9(context.eval_ctx, environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'sizes'), ', '), 36))
            yield '">'
            yield escape(t_9(context.eval_ctx, environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'sizes'), ', '))
            yield '</span></span>\n'
        yield '</p>\n'
    yield '</header>\n'
    if environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'personal'):
        pass
        yield '<section class="personal">\n<h2 id="personal">'
        yield escape(environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'personal'))
        yield '</h2>\n'
        for (l_1_name, l_1_texts) in (('asked', environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'personal'), 'asked')), ('made_for', environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'personal'), 'made_for'))):
            _loop_vars = {}
            pass
            if l_1_texts:
                pass
                yield '<p><b>'
                yield escape(environment.getitem((undefined(name='heading') if l_0_heading is missing else l_0_heading), l_1_name))
                yield '</b></p>\n<ul class="plain" role="list">\n'
                for l_2_text in l_1_texts:
                    l_2_web = resolve('web')
                    _loop_vars = {}
                    pass
                    yield '<li>'
                    yield escape(t_13(l_2_text, (undefined(name='web') if l_2_web is missing else l_2_web)))
                    yield '</li>\n'
                l_2_text = l_2_web = missing
                yield '</ul>\n'
        l_1_name = l_1_texts = missing
        if environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'personal'), 'changes'):
            pass
            yield '<div class="wide" role="region" aria-labelledby="personal" tabindex="0">\n<table>\n<thead><tr>'
            for l_1_cell in environment.getattr(environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'personal'), 'changes'), 'head'):
                _loop_vars = {}
                pass
                yield '<th scope="col">'
                yield escape(t_19(l_1_cell))
                yield '</th>'
            l_1_cell = missing
            yield '</tr></thead>\n<tbody>\n'
            l_1_loop = missing
            for l_1_row, l_1_loop in LoopContext(environment.getattr(environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'personal'), 'changes'), 'rows'), undefined):
                _loop_vars = {}
                pass
                yield '<tr>'
                l_2_loop = missing
                for l_2_cell, l_2_loop in LoopContext(l_1_row, undefined):
                    l_2_web = resolve('web')
                    _loop_vars = {}
                    pass
                    if environment.getattr(l_2_loop, 'first'):
                        pass
                        yield '<th scope="row">'
                        yield escape(t_13(t_19(l_2_cell), (undefined(name='web') if l_2_web is missing else l_2_web)))
                        yield '</th>'
                    else:
                        pass
                        yield '<td'
                        if (undefined(name='web') if l_2_web is missing else l_2_web):
                            pass
                            yield ' data-label="'
                            yield escape(environment.getitem(environment.getattr(environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'personal'), 'changes'), 'head'), environment.getattr(l_2_loop, 'index0')))
                            yield '"'
                        yield '>'
                        yield escape(t_13(t_19(l_2_cell), (undefined(name='web') if l_2_web is missing else l_2_web)))
                        yield '</td>'
                l_2_loop = l_2_cell = l_2_web = missing
                yield '</tr>\n'
            l_1_loop = l_1_row = missing
            yield '</tbody>\n</table>\n</div>\n'
        for l_1_note in environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'personal'), 'notes'):
            _loop_vars = {}
            pass
            yield '<p class="quiet">'
            yield escape(l_1_note)
            yield '</p>\n'
        l_1_note = missing
        yield '</section>\n'
    if (t_11(t_12(context.eval_ctx, t_17(context, environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'sections'), 'level', 'le', 2))) > 1):
        pass
        yield '<nav class="contents" aria-label="'
        yield escape(environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'contents'))
        yield '">\n<ul role="list">\n'
        l_1_loop = missing
        for l_1_section, l_1_loop in LoopContext(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'sections'), undefined):
            _loop_vars = {}
            pass
            if (environment.getattr(l_1_section, 'heading') and (environment.getattr(l_1_section, 'level') <= 2)):
                pass
                yield '<li><a href="#part-'
                yield escape(environment.getattr(l_1_loop, 'index'))
                yield '">'
                yield escape(environment.getattr(l_1_section, 'heading'))
                yield '</a></li>\n'
        l_1_loop = l_1_section = missing
        yield '</ul>\n</nav>\n'
    if (environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'finished') and (t_11(environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'finished'), 'head')) <= 3)):
        pass
        yield escape(context.call((undefined(name='finished_table') if l_0_finished_table is missing else l_0_finished_table)))
        yield '\n'
    yield '</div>\n'
    if environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'cloth'):
        pass
        yield '<div class="shown"><img class="cloth '
        yield escape(('tall' if (environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'cloth'), 'height') > (2 * environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'cloth'), 'width'))) else ('broad' if (environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'cloth'), 'width') > (1.3 * environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'cloth'), 'height'))) else cond_expr_undefined("the inline if-expression on line 129 in 'parts.html' evaluated to false and no else section was defined."))))
        yield '" src="'
        yield escape(environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'cloth'), 'src'))
        yield '" width="'
        yield escape(environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'cloth'), 'width'))
        yield '" height="'
        yield escape(environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'cloth'), 'height'))
        yield '" alt="'
        yield escape(environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'cloth'), 'words'))
        yield '"></div>\n'
    yield '</div>\n'
    if (environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'finished') and (t_11(environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'finished'), 'head')) > 3)):
        pass
        yield escape(context.call((undefined(name='finished_table') if l_0_finished_table is missing else l_0_finished_table)))
        yield '\n'
    yield '<div class="trio">\n'
    yield escape(context.call((undefined(name='listed') if l_0_listed is missing else l_0_listed), 'gauge', environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'gauge')))
    yield '\n'
    yield escape(context.call((undefined(name='listed') if l_0_listed is missing else l_0_listed), 'needles', environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'needles')))
    yield '\n'
    yield escape(context.call((undefined(name='listed') if l_0_listed is missing else l_0_listed), 'notions', environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'notions')))
    yield '\n</div>\n'
    if (environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'yarns') or environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'shades')):
        pass
        yield '<section class="yarn">\n<h2 id="yarn">'
        yield escape(environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'yarn'))
        yield '</h2>\n'
        for l_1_yarn in environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'yarns'):
            l_1_web = resolve('web')
            _loop_vars = {}
            pass
            yield '<p>'
            yield escape(t_13(l_1_yarn, (undefined(name='web') if l_1_web is missing else l_1_web)))
            yield '</p>\n'
        l_1_yarn = l_1_web = missing
        if environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'shades'):
            pass
            yield '<div class="wide" role="region" aria-labelledby="yarn" tabindex="0">\n<table class="stacks">\n<thead><tr>'
            for l_1_name in t_18(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'shades')):
                _loop_vars = {}
                pass
                yield '<th scope="col">'
                yield escape(environment.getitem((undefined(name='heading') if l_0_heading is missing else l_0_heading), l_1_name))
                yield '</th>'
            l_1_name = missing
            yield '</tr></thead>\n<tbody>\n'
            l_1_loop = missing
            for l_1_shade, l_1_loop in LoopContext(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'shades'), undefined):
                _loop_vars = {}
                pass
                yield '<tr>'
                l_2_loop = missing
                for l_2_name, l_2_loop in LoopContext(t_18(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'shades')), undefined):
                    l_2_web = resolve('web')
                    _loop_vars = {}
                    pass
                    if environment.getattr(l_2_loop, 'first'):
                        pass
                        yield '<th scope="row">'
                        yield escape(context.call((undefined(name='swatch') if l_0_swatch is missing else l_0_swatch), environment.getattr(l_1_shade, 'colours'), _loop_vars=_loop_vars))
                        yield ' '
                        yield escape(t_19(environment.getattr(l_1_shade, 'name')))
                        yield '</th>'
                    else:
                        pass
                        yield '<td class="'
                        yield escape(l_2_name)
                        yield '"'
                        if (undefined(name='web') if l_2_web is missing else l_2_web):
                            pass
                            yield ' data-label="'
                            yield escape(environment.getitem((undefined(name='heading') if l_0_heading is missing else l_0_heading), l_2_name))
                            yield '"'
                        yield '>'
                        if (undefined(name='web') if l_2_web is missing else l_2_web):
                            pass
                            yield escape(t_13(t_19(environment.getitem(l_1_shade, l_2_name)), True))
                        else:
                            pass
                            yield escape(t_14(environment.getitem(l_1_shade, l_2_name)))
                        yield '</td>'
                l_2_loop = l_2_name = l_2_web = missing
                yield '</tr>\n'
            l_1_loop = l_1_shade = missing
            yield '</tbody>\n</table>\n</div>\n'
        yield '</section>\n'
    yield escape(context.call((undefined(name='listed') if l_0_listed is missing else l_0_listed), 'substitution', environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'substitution')))
    yield '\n'
    for l_1_notice in environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'notices'):
        l_1_web = resolve('web')
        _loop_vars = {}
        pass
        yield '<p class="notice">'
        yield escape(t_13(l_1_notice, (undefined(name='web') if l_1_web is missing else l_1_web)))
        yield '</p>\n'
    l_1_notice = l_1_web = missing
    yield escape(context.call((undefined(name='listed') if l_0_listed is missing else l_0_listed), 'cautions', environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'cautions')))
    yield '\n'
    yield escape(context.call((undefined(name='listed') if l_0_listed is missing else l_0_listed), 'notes', environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'notes')))
    yield '\n'
    yield escape(context.call((undefined(name='listed') if l_0_listed is missing else l_0_listed), 'care', environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'care')))
    yield '\n'
    if environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'skills'):
        pass
        yield '<section class="skills">\n<h2 id="skills">'
        yield escape(environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'skills'))
        yield '</h2>\n<div class="halves">\n'
        for l_1_half in t_7(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'skills')):
            _loop_vars = {}
            pass
            yield '<ul role="list">\n'
            for l_2_skill in l_1_half:
                _loop_vars = {}
                pass
                yield '<li>'
                yield escape(l_2_skill)
                yield '</li>\n'
            l_2_skill = missing
            yield '</ul>\n'
        l_1_half = missing
        yield '</div>\n</section>\n'
    if environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'abbreviations'):
        pass
        yield '<section class="abbreviations">\n<h2 id="abbreviations">'
        yield escape(environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'abbreviations'))
        yield '</h2>\n<div class="halves">\n'
        for l_1_half in t_7(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'abbreviations')):
            _loop_vars = {}
            pass
            yield '<ul role="list">\n'
            for l_2_abbreviation in l_1_half:
                _loop_vars = {}
                pass
                yield '<li><b>'
                yield escape(environment.getattr(l_2_abbreviation, 'short'))
                yield '</b> <span>'
                yield escape(environment.getattr(l_2_abbreviation, 'meaning'))
                yield '</span>'
                if environment.getattr(l_2_abbreviation, 'stitches'):
                    pass
                    yield ' <span class="quiet">'
                    yield escape(environment.getattr(l_2_abbreviation, 'stitches'))
                    yield '</span>'
                yield '</li>\n'
            l_2_abbreviation = missing
            yield '</ul>\n'
        l_1_half = missing
        yield '</div>\n</section>\n'
    if environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'schematics'):
        pass
        yield '<section class="schematics">\n<h2 id="schematic">'
        yield escape(environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'schematic'))
        yield '</h2>\n'
        l_1_loop = missing
        for l_1_schematic, l_1_loop in LoopContext(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'schematics'), undefined):
            _loop_vars = {}
            pass
            yield '<div class="drawn">\n'
            if (t_11(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'schematics')) > 1):
                pass
                yield '<h3>'
                yield escape(environment.getattr(l_1_schematic, 'title'))
                yield '</h3>\n'
            yield '<div class="outline">'
            yield escape(t_6(environment.getattr(l_1_schematic, 'svg')))
            yield '</div>\n<div class="measured'
            yield escape((' few' if (t_11(environment.getattr(environment.getattr(l_1_schematic, 'measures'), 'head')) <= 4) else cond_expr_undefined("the inline if-expression on line 204 in 'parts.html' evaluated to false and no else section was defined.")))
            yield '">\n<table class="stacks">\n<thead><tr>'
            for l_2_cell in environment.getattr(environment.getattr(l_1_schematic, 'measures'), 'head'):
                _loop_vars = {}
                pass
                yield '<th scope="col">'
                yield escape(l_2_cell)
                yield '</th>'
            l_2_cell = missing
            yield '</tr></thead>\n<tbody>\n'
            l_2_loop = missing
            for l_2_row, l_2_loop in LoopContext(environment.getattr(environment.getattr(l_1_schematic, 'measures'), 'rows'), undefined):
                _loop_vars = {}
                pass
                yield '<tr>'
                l_3_loop = missing
                for l_3_cell, l_3_loop in LoopContext(l_2_row, undefined):
                    l_3_web = resolve('web')
                    _loop_vars = {}
                    pass
                    if environment.getattr(l_3_loop, 'first'):
                        pass
                        yield '<th scope="row">'
                        yield escape(t_19(l_3_cell))
                        yield '</th>'
                    else:
                        pass
                        yield '<td'
                        if (undefined(name='web') if l_3_web is missing else l_3_web):
                            pass
                            yield ' data-label="'
                            yield escape(environment.getitem(environment.getattr(environment.getattr(l_1_schematic, 'measures'), 'head'), environment.getattr(l_3_loop, 'index0')))
                            yield '"'
                        yield '>'
                        yield escape(t_13(l_3_cell, (undefined(name='web') if l_3_web is missing else l_3_web)))
                        yield '</td>'
                l_3_loop = l_3_cell = l_3_web = missing
                yield '</tr>\n'
            l_2_loop = l_2_row = missing
            yield '</tbody>\n</table>\n'
            if environment.getattr(l_1_schematic, 'note'):
                pass
                yield '<p class="quiet">'
                yield escape(environment.getattr(l_1_schematic, 'note'))
                yield '</p>\n'
            yield '</div>\n</div>\n'
        l_1_loop = l_1_schematic = missing
        yield '</section>\n'
    if t_2((undefined(name='doc') if l_0_doc is missing else l_0_doc)):
        pass
        yield '<section class="charts">\n<h2 id="charts">'
        yield escape(environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'charts'))
        yield '</h2>\n<p class="quiet">'
        yield escape(context.call((undefined(name='chart_note') if l_0_chart_note is missing else l_0_chart_note)))
        yield escape((markup_join((' ', environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'chart_place'), )) if (t_11(t_2((undefined(name='doc') if l_0_doc is missing else l_0_doc))) < t_11(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'charts'))) else cond_expr_undefined("the inline if-expression on line 224 in 'parts.html' evaluated to false and no else section was defined.")))
        yield '</p>\n'
        l_1_loop = missing
        for l_1_chart, l_1_loop in LoopContext(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'charts'), undefined):
            _loop_vars = {}
            pass
            if (l_1_chart in t_2((undefined(name='doc') if l_0_doc is missing else l_0_doc))):
                pass
                yield escape(context.call((undefined(name='charted') if l_0_charted is missing else l_0_charted), l_1_chart, environment.getattr(l_1_loop, 'index'), 3, _loop_vars=_loop_vars))
                yield '\n'
        l_1_loop = l_1_chart = missing
        yield '</section>\n'
    l_1_loop = missing
    for l_1_section, l_1_loop in LoopContext(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'sections'), undefined):
        l_1_kept = resolve('kept')
        l_1_part = missing
        _loop_vars = {}
        pass
        l_1_part = environment.getattr(l_1_loop, 'index0')
        _loop_vars['part'] = l_1_part
        yield '<section class="part level-'
        yield escape((2 if (environment.getattr(l_1_section, 'level') <= 2) else 3))
        yield escape((' bare' if ((not environment.getattr(l_1_section, 'lines')) and (not environment.getattr(l_1_section, 'motifs'))) else cond_expr_undefined("the inline if-expression on line 234 in 'parts.html' evaluated to false and no else section was defined.")))
        yield ' '
        yield escape(t_20(l_1_section))
        yield ' '
        yield escape(t_8(l_1_section))
        yield '">\n'
        if environment.getattr(l_1_section, 'heading'):
            pass
            if (environment.getattr(l_1_section, 'level') <= 2):
                pass
                yield '<h2 id="part-'
                yield escape(environment.getattr(l_1_loop, 'index'))
                yield '"'
                yield escape(t_5(environment.getattr(l_1_section, 'heading')))
                yield '>'
                yield escape(environment.getattr(l_1_section, 'heading'))
                yield '</h2>\n'
            else:
                pass
                yield '<h3'
                yield escape(t_5(environment.getattr(l_1_section, 'heading')))
                yield '>'
                yield escape(environment.getattr(l_1_section, 'heading'))
                yield '</h3>\n'
        l_2_loop = missing
        for l_2_chart, l_2_loop in LoopContext(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'charts'), undefined):
            _loop_vars = {}
            pass
            if (environment.getattr(l_2_chart, 'motif') and (environment.getattr(l_2_chart, 'motif') in environment.getattr(l_1_section, 'motifs'))):
                pass
                yield escape(context.call((undefined(name='charted') if l_0_charted is missing else l_0_charted), l_2_chart, environment.getattr(l_2_loop, 'index'), (3 if (environment.getattr(l_1_section, 'level') <= 2) else 4), t_15((undefined(name='doc') if l_0_doc is missing else l_0_doc), l_2_chart), _loop_vars=_loop_vars))
                yield '\n'
        l_2_loop = l_2_chart = missing
        def t_29(fiter):
            for l_2_left in fiter:
                if (environment.getattr(l_2_left, 'motif') in environment.getattr(l_1_section, 'motifs')):
                    yield l_2_left
        for l_2_left in t_29(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'uncharted')):
            _loop_vars = {}
            pass
            yield '<p class="quiet reading">'
            yield escape(environment.getattr(l_2_left, 'words'))
            yield '</p>\n'
        l_2_left = missing
        if environment.getattr(l_1_section, 'lines'):
            pass
            l_1_kept = t_10(l_1_section)
            _loop_vars['kept'] = l_1_kept
            yield '<ul class="lines" role="list">\n'
            l_2_loop = missing
            for (l_2_line, l_2_tag), l_2_loop in LoopContext(t_21(l_1_section), undefined):
                l_2_web = resolve('web')
                _loop_vars = {}
                pass
                yield '<li class="'
                yield escape(environment.getattr(l_2_line, 'kind'))
                yield escape((' change' if l_2_tag else cond_expr_undefined("the inline if-expression on line 254 in 'parts.html' evaluated to false and no else section was defined.")))
                yield escape((' kept' if (environment.getattr(l_2_loop, 'index0') in (undefined(name='kept') if l_1_kept is missing else l_1_kept)) else cond_expr_undefined("the inline if-expression on line 254 in 'parts.html' evaluated to false and no else section was defined.")))
                yield '"'
                yield escape((t_5(environment.getattr(l_2_line, 'text')) if (environment.getattr(l_2_line, 'kind') == 'note') else cond_expr_undefined("the inline if-expression on line 254 in 'parts.html' evaluated to false and no else section was defined.")))
                if (undefined(name='web') if l_2_web is missing else l_2_web):
                    pass
                    yield ' data-at="'
                    yield escape((undefined(name='part') if l_1_part is missing else l_1_part))
                    yield '.'
                    yield escape(environment.getattr(l_2_loop, 'index0'))
                    yield '"'
                yield '>'
                if l_2_tag:
                    pass
                    yield '<span class="tag" aria-hidden="true">'
                    yield escape(context.call((undefined(name='swatch') if l_0_swatch is missing else l_0_swatch), environment.getattr(l_2_line, 'colours'), _loop_vars=_loop_vars))
                    yield '<i>'
                    yield escape(environment.getattr(l_2_line, 'strand'))
                    yield '</i></span>'
                if environment.getattr(l_2_line, 'label'):
                    pass
                    yield '<b class="label">'
                    yield escape(environment.getattr(l_2_line, 'label'))
                    yield '</b> '
                yield '<span class="text">'
                yield escape((t_13(environment.getattr(l_2_line, 'text'), (undefined(name='web') if l_2_web is missing else l_2_web)) if (undefined(name='web') if l_2_web is missing else l_2_web) else environment.getattr(l_2_line, 'text')))
                yield '</span>'
                if environment.getattr(l_2_line, 'count'):
                    pass
                    yield ' <span class="count">'
                    yield escape(environment.getattr(l_2_line, 'count'))
                    yield '</span>'
                if (t_1(l_2_line) or t_22(l_2_line)):
                    pass
                    yield '<span class="tallies" aria-hidden="true">\n'
                    l_3_loop = missing
                    for l_3_number, l_3_loop in LoopContext(t_1(l_2_line), undefined):
                        l_3_wide = l_3_high = l_3_view = l_3_path = missing
                        _loop_vars = {}
                        pass
                        yield '<span class="tally">'
                        if ((t_11(t_1(l_2_line)) > 1) and (environment.getattr(l_3_loop, 'index0') < t_11(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'sizes')))):
                            pass
                            yield '<i>'
                            yield escape(environment.getitem(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'sizes'), environment.getattr(l_3_loop, 'index0')))
                            yield '</i>'
                        (l_3_wide, l_3_high, l_3_view, l_3_path) = t_23(l_3_number)
                        _loop_vars.update({'high': l_3_high, 'path': l_3_path, 'view': l_3_view, 'wide': l_3_wide})
                        yield '<svg class="ticks" xmlns="http://www.w3.org/2000/svg" role="img" width="'
                        yield escape((undefined(name='wide') if l_3_wide is missing else l_3_wide))
                        yield 'mm" height="'
                        yield escape((undefined(name='high') if l_3_high is missing else l_3_high))
                        yield 'mm" viewBox="'
                        yield escape((undefined(name='view') if l_3_view is missing else l_3_view))
                        yield '"><title>'
                        yield escape(environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'boxes'))
                        yield '</title><path fill="#ffffff" stroke="#5d6266" stroke-width="2.5" d="'
                        yield escape((undefined(name='path') if l_3_path is missing else l_3_path))
                        yield '"/></svg></span>\n'
                    l_3_loop = l_3_number = l_3_wide = l_3_high = l_3_view = l_3_path = missing
                    l_3_loop = missing
                    for l_3_tens, l_3_loop in LoopContext(t_22(l_2_line), undefined):
                        _loop_vars = {}
                        pass
                        yield '<span class="tally">'
                        if ((t_11(environment.getattr(l_2_line, 'tally')) > 1) and (environment.getattr(l_3_loop, 'index0') < t_11(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'sizes')))):
                            pass
                            yield '<i>'
                            yield escape(environment.getitem(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'sizes'), environment.getattr(l_3_loop, 'index0')))
                            yield '</i>'
                        for l_4_done in l_3_tens:
                            _loop_vars = {}
                            pass
                            yield '<span class="ten">'
                            yield escape(l_4_done)
                            yield '</span>'
                        l_4_done = missing
                        yield '</span>\n'
                    l_3_loop = l_3_tens = missing
                    yield '</span>'
                yield '</li>\n'
            l_2_loop = l_2_line = l_2_tag = l_2_web = missing
            yield '</ul>\n'
        yield '</section>\n'
    l_1_loop = l_1_section = l_1_part = l_1_kept = missing

blocks = {}
debug_info = '1=152&2=157&3=162&6=177&7=186&8=190&9=194&10=199&11=205&16=217&18=222&20=224&21=227&22=231&24=237&26=251&27=258&34=297&35=301&37=307&38=321&39=334&40=346&41=350&44=355&45=358&46=364&51=378&53=400&54=405&62=442&65=444&66=450&67=453&69=457&70=460&72=464&74=467&75=470&77=474&78=477&83=485&85=488&86=490&87=493&88=496&90=498&91=503&96=508&99=511&101=520&102=525&108=549&109=553&113=557&114=560&116=563&117=566&118=569&124=575&125=577&128=580&129=583&132=594&133=596&136=599&137=601&138=603&140=605&142=608&143=610&144=615&146=618&149=621&151=630&152=635&160=669&161=671&162=676&164=679&165=681&166=683&167=685&169=688&171=690&173=694&174=698&181=704&183=707&185=709&187=713&188=717&195=731&197=734&198=737&200=741&201=744&203=747&204=749&206=751&208=760&209=765&213=789&214=792&221=797&223=800&224=802&225=806&226=809&227=811&232=816&233=821&234=824&235=831&236=833&237=836&239=845&242=850&243=853&244=855&247=858&248=866&250=869&251=871&253=875&254=880&255=893&256=900&257=906&258=908&259=913&261=917&262=922&264=942&265=946'

MARK = '3.1.6 11075 4bccf6ab'
