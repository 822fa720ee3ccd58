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
    l_0_swatch = l_0_listed = missing
    try:
        t_1 = environment.filters['boxes']
    except KeyError:
        @internalcode
        def t_1(*unused):
            raise TemplateRuntimeError("No filter named 'boxes' found.")
    try:
        t_2 = environment.filters['colours']
    except KeyError:
        @internalcode
        def t_2(*unused):
            raise TemplateRuntimeError("No filter named 'colours' found.")
    try:
        t_3 = environment.filters['drawing']
    except KeyError:
        @internalcode
        def t_3(*unused):
            raise TemplateRuntimeError("No filter named 'drawing' found.")
    try:
        t_4 = environment.filters['halves']
    except KeyError:
        @internalcode
        def t_4(*unused):
            raise TemplateRuntimeError("No filter named 'halves' found.")
    try:
        t_5 = environment.filters['hang']
    except KeyError:
        @internalcode
        def t_5(*unused):
            raise TemplateRuntimeError("No filter named 'hang' found.")
    try:
        t_6 = environment.filters['join']
    except KeyError:
        @internalcode
        def t_6(*unused):
            raise TemplateRuntimeError("No filter named 'join' found.")
    try:
        t_7 = environment.filters['length']
    except KeyError:
        @internalcode
        def t_7(*unused):
            raise TemplateRuntimeError("No filter named 'length' found.")
    try:
        t_8 = environment.filters['list']
    except KeyError:
        @internalcode
        def t_8(*unused):
            raise TemplateRuntimeError("No filter named 'list' found.")
    try:
        t_9 = environment.filters['measures']
    except KeyError:
        @internalcode
        def t_9(*unused):
            raise TemplateRuntimeError("No filter named 'measures' found.")
    try:
        t_10 = environment.filters['selectattr']
    except KeyError:
        @internalcode
        def t_10(*unused):
            raise TemplateRuntimeError("No filter named 'selectattr' found.")
    try:
        t_11 = environment.filters['shade_columns']
    except KeyError:
        @internalcode
        def t_11(*unused):
            raise TemplateRuntimeError("No filter named 'shade_columns' found.")
    try:
        t_12 = environment.filters['soft']
    except KeyError:
        @internalcode
        def t_12(*unused):
            raise TemplateRuntimeError("No filter named 'soft' found.")
    try:
        t_13 = environment.filters['strand_column']
    except KeyError:
        @internalcode
        def t_13(*unused):
            raise TemplateRuntimeError("No filter named 'strand_column' found.")
    try:
        t_14 = environment.filters['tagged']
    except KeyError:
        @internalcode
        def t_14(*unused):
            raise TemplateRuntimeError("No filter named 'tagged' found.")
    try:
        t_15 = environment.filters['truncate']
    except KeyError:
        @internalcode
        def t_15(*unused):
            raise TemplateRuntimeError("No filter named 'truncate' found.")
    try:
        t_16 = environment.tests['divisibleby']
    except KeyError:
        @internalcode
        def t_16(*unused):
            raise TemplateRuntimeError("No test named 'divisibleby' found.")
    pass
    def macro(l_1_values):
        t_17 = []
        if l_1_values is missing:
            l_1_values = undefined("parameter 'values' was not provided", name='values')
        pass
        if t_2(l_1_values):
            pass
            t_17.append(
                '<span class="swatch" aria-hidden="true">',
            )
            for l_2_value in t_2(l_1_values):
                _loop_vars = {}
                pass
                t_17.extend((
                    '<span style="background:',
                    escape(l_2_value),
                    '"></span>',
                ))
            l_2_value = missing
            t_17.append(
                '</span>',
            )
        return concat(t_17)
    context.exported_vars.add('swatch')
    context.vars['swatch'] = l_0_swatch = Macro(environment, macro, 'swatch', ('values',), False, False, False, context.eval_ctx.autoescape)
    def macro(l_1_name, l_1_items, l_1_class):
        t_18 = []
        if l_1_name is missing:
            l_1_name = undefined("parameter 'name' was not provided", name='name')
        if l_1_items is missing:
            l_1_items = undefined("parameter 'items' was not provided", name='items')
        if l_1_class is missing:
            l_1_class = ''
        pass
        if l_1_items:
            pass
            t_18.extend((
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
                t_18.extend((
                    '<p>',
                    escape(t_9(l_2_item, (undefined(name='web') if l_2_web is missing else l_2_web))),
                    '</p>\n',
                ))
            l_2_item = l_2_web = missing
            t_18.append(
                '</section>\n',
            )
        return concat(t_18)
    context.exported_vars.add('listed')
    context.vars['listed'] = l_0_listed = Macro(environment, macro, 'listed', ('name', 'items', 'class'), False, False, False, context.eval_ctx.autoescape)
    yield '<div class="front'
    yield escape((' pictured' if environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'cloth') else cond_expr_undefined("the inline if-expression on line 16 in 'parts.html' evaluated to false and no else section was defined.")))
    yield '">\n<div class="told">\n<header class="cover">\n<h1 data-short="'
    yield escape(t_15(environment, environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'title'), 48, True, '…', 0))
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
        yield '<p class="summary">'
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
            yield escape(t_15(environment, t_6(context.eval_ctx, environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'sizes'), ', '), 36, True, '…', 0))
            yield '">'
            yield escape(t_6(context.eval_ctx, environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'sizes'), ', '))
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
                    yield escape(t_9(l_2_text, (undefined(name='web') if l_2_web is missing else l_2_web)))
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
                yield escape(t_12(l_1_cell))
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
                        yield escape(t_9(t_12(l_2_cell), (undefined(name='web') if l_2_web is missing else l_2_web)))
                        yield '</th>'
                    else:
                        pass
                        yield '<td>'
                        yield escape(t_9(t_12(l_2_cell), (undefined(name='web') if l_2_web is missing else l_2_web)))
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
    if (t_7(t_8(context.eval_ctx, t_10(context, environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'sections'), 'level', 'le', 2))) > 1):
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
    if environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'finished'):
        pass
        yield '<section class="finished">\n<h2 id="finished">'
        yield escape(environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'finished'))
        yield '</h2>\n<div class="wide" role="region" aria-labelledby="finished" tabindex="0">\n<table>\n'
        if environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'finished'), 'caption'):
            pass
            yield '<caption>'
            yield escape(environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'finished'), 'caption'))
            yield '</caption>\n'
        yield '<thead><tr>'
        for l_1_cell in environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'finished'), 'head'):
            l_1_web = resolve('web')
            _loop_vars = {}
            pass
            yield '<th scope="col">'
            yield escape(t_9(t_12(l_1_cell), (undefined(name='web') if l_1_web is missing else l_1_web)))
            yield '</th>'
        l_1_cell = l_1_web = missing
        yield '</tr></thead>\n<tbody>\n'
        l_1_loop = missing
        for l_1_row, l_1_loop in LoopContext(environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'finished'), 'rows'), undefined):
            _loop_vars = {}
            pass
            yield '<tr>'
            l_2_loop = missing
            for l_2_cell, l_2_loop in LoopContext(l_1_row, undefined):
                l_2_web = resolve('web')
                _loop_vars = {}
                pass
                if (environment.getattr(l_2_loop, 'first') and environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'sizes')):
                    pass
                    yield '<th scope="row">'
                    yield escape(t_9(t_12(l_2_cell), (undefined(name='web') if l_2_web is missing else l_2_web)))
                    yield '</th>'
                else:
                    pass
                    yield '<td>'
                    yield escape(t_9(t_12(l_2_cell), (undefined(name='web') if l_2_web is missing else l_2_web)))
                    yield '</td>'
            l_2_loop = l_2_cell = l_2_web = missing
            yield '</tr>\n'
        l_1_loop = l_1_row = missing
        yield '</tbody>\n</table>\n</div>\n</section>\n'
    yield '</div>\n'
    if environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'cloth'):
        pass
        yield '<div class="shown"><img class="cloth '
        yield escape(('tall' if (environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'cloth'), 'height') > (2 * environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'cloth'), 'width'))) else ('broad' if (environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'cloth'), 'width') > (1.3 * environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'cloth'), 'height'))) else cond_expr_undefined("the inline if-expression on line 98 in 'parts.html' evaluated to false and no else section was defined."))))
        yield '" src="'
        yield escape(environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'cloth'), 'src'))
        yield '" width="'
        yield escape(environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'cloth'), 'width'))
        yield '" height="'
        yield escape(environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'cloth'), 'height'))
        yield '" alt="'
        yield escape(environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'cloth'), 'words'))
        yield '"></div>\n'
    yield '</div>\n<div class="trio">\n'
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
            yield escape(t_9(l_1_yarn, (undefined(name='web') if l_1_web is missing else l_1_web)))
            yield '</p>\n'
        l_1_yarn = l_1_web = missing
        if environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'shades'):
            pass
            yield '<div class="wide" role="region" aria-labelledby="yarn" tabindex="0">\n<table>\n<thead><tr>'
            for l_1_name in t_11(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'shades')):
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
                for l_2_name, l_2_loop in LoopContext(t_11(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'shades')), undefined):
                    l_2_web = resolve('web')
                    _loop_vars = {}
                    pass
                    if environment.getattr(l_2_loop, 'first'):
                        pass
                        yield '<th scope="row">'
                        yield escape(context.call((undefined(name='swatch') if l_0_swatch is missing else l_0_swatch), environment.getattr(l_1_shade, 'colours'), _loop_vars=_loop_vars))
                        yield ' '
                        yield escape(t_12(environment.getattr(l_1_shade, 'name')))
                        yield '</th>'
                    else:
                        pass
                        yield '<td>'
                        yield escape(t_9(t_12(environment.getitem(l_1_shade, l_2_name)), (undefined(name='web') if l_2_web is missing else l_2_web)))
                        yield '</td>'
                l_2_loop = l_2_name = l_2_web = missing
                yield '</tr>\n'
            l_1_loop = l_1_shade = missing
            yield '</tbody>\n</table>\n</div>\n'
        yield '</section>\n'
    for l_1_notice in environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'notices'):
        l_1_web = resolve('web')
        _loop_vars = {}
        pass
        yield '<p class="notice">'
        yield escape(t_9(l_1_notice, (undefined(name='web') if l_1_web is missing else l_1_web)))
        yield '</p>\n'
    l_1_notice = l_1_web = missing
    yield escape(context.call((undefined(name='listed') if l_0_listed is missing else l_0_listed), 'cautions', environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'cautions')))
    yield '\n'
    yield escape(context.call((undefined(name='listed') if l_0_listed is missing else l_0_listed), 'notes', environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'notes')))
    yield '\n'
    yield escape(context.call((undefined(name='listed') if l_0_listed is missing else l_0_listed), 'care', environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'care')))
    yield '\n'
    if environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'abbreviations'):
        pass
        yield '<section class="abbreviations">\n<h2 id="abbreviations">'
        yield escape(environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'abbreviations'))
        yield '</h2>\n<div class="halves">\n'
        for l_1_half in t_4(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'abbreviations')):
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
    if environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'charts'):
        pass
        yield '<section class="charts">\n<h2 id="charts">'
        yield escape(environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'charts'))
        yield '</h2>\n<p class="quiet">'
        yield escape((environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'chart_note') if t_8(context.eval_ctx, t_10(context, environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'charts'), 'sided')) else environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'chart_note_round')))
        yield escape((markup_join((' ', environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'chart_frame'), )) if t_8(context.eval_ctx, t_10(context, environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'charts'), 'framed')) else cond_expr_undefined("the inline if-expression on line 149 in 'parts.html' evaluated to false and no else section was defined.")))
        yield '</p>\n'
        l_1_loop = missing
        for l_1_chart, l_1_loop in LoopContext(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'charts'), undefined):
            l_1_web = resolve('web')
            _loop_vars = {}
            pass
            yield '<div class="charted'
            yield escape((' wide-chart' if environment.getattr(l_1_chart, 'wide') else cond_expr_undefined("the inline if-expression on line 151 in 'parts.html' evaluated to false and no else section was defined.")))
            yield escape((' long-chart' if (t_7(environment.getattr(l_1_chart, 'strips')) > 1) else cond_expr_undefined("the inline if-expression on line 151 in 'parts.html' evaluated to false and no else section was defined.")))
            yield '"'
            if (undefined(name='web') if l_1_web is missing else l_1_web):
                pass
                yield ' data-motif="'
                yield escape(environment.getattr(l_1_chart, 'motif'))
                yield '"'
            yield '>\n<h3 id="chart-'
            yield escape(environment.getattr(l_1_loop, 'index'))
            yield '">'
            yield escape(environment.getattr(l_1_chart, 'title'))
            yield '</h3>\n<div class="with-key">\n<div class="strips" role="region" aria-labelledby="chart-'
            yield escape(environment.getattr(l_1_loop, 'index'))
            yield '" tabindex="0">\n'
            for (l_2_part, l_2_strip) in environment.getattr(l_1_chart, 'strips'):
                _loop_vars = {}
                pass
                yield '<div class="strip">'
                if l_2_part:
                    pass
                    yield '<p class="quiet">'
                    yield escape(l_2_part)
                    yield '</p>'
                yield escape(t_3(l_2_strip))
                yield '</div>\n'
            l_2_part = l_2_strip = missing
            yield '</div>\n<div class="key">\n<table>\n<thead><tr><th scope="col">'
            yield escape(environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'symbol'))
            yield '</th>'
            if environment.getattr(l_1_chart, 'sided'):
                pass
                yield '<th scope="col">'
                yield escape(environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'rs'))
                yield '</th><th scope="col">'
                yield escape(environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'ws'))
                yield '</th>'
            else:
                pass
                yield '<th scope="col">'
                yield escape(environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'meaning'))
                yield '</th>'
            yield '</tr></thead>\n<tbody>\n'
            for l_2_line in environment.getattr(l_1_chart, 'key'):
                _loop_vars = {}
                pass
                yield '<tr><td>'
                yield escape(t_3(environment.getattr(l_2_line, 'svg')))
                yield '</td>'
                if (not environment.getattr(l_1_chart, 'sided')):
                    pass
                    yield '<td>'
                    yield escape((environment.getattr(l_2_line, 'rs') or environment.getattr(l_2_line, 'ws')))
                    yield '</td>'
                elif ((environment.getattr(l_2_line, 'rs') == environment.getattr(l_2_line, 'ws')) or (t_7(environment.getattr(l_2_line, 'rs')) > 40)):
                    pass
                    yield '<td colspan="2">'
                    yield escape(environment.getattr(l_2_line, 'rs'))
                    yield '</td>'
                else:
                    pass
                    yield '<td>'
                    yield escape((environment.getattr(l_2_line, 'rs') or '–'))
                    yield '</td><td>'
                    yield escape((environment.getattr(l_2_line, 'ws') or '–'))
                    yield '</td>'
                yield '</tr>\n'
            l_2_line = missing
            yield '</tbody>\n</table>\n</div>\n</div>\n</div>\n'
        l_1_loop = l_1_chart = l_1_web = missing
        yield '</section>\n'
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
            if (t_7(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'schematics')) > 1):
                pass
                yield '<h3>'
                yield escape(environment.getattr(l_1_schematic, 'title'))
                yield '</h3>\n'
            yield '<div class="outline">'
            yield escape(t_3(environment.getattr(l_1_schematic, 'svg')))
            yield '</div>\n<div class="measured">\n<table>\n<thead><tr>'
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
                        yield escape(t_12(l_3_cell))
                        yield '</th>'
                    else:
                        pass
                        yield '<td>'
                        yield escape(t_9(l_3_cell, (undefined(name='web') if l_3_web is missing else l_3_web)))
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
    l_1_loop = missing
    for l_1_section, l_1_loop in LoopContext(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'sections'), undefined):
        l_1_part = missing
        _loop_vars = {}
        pass
        l_1_part = environment.getattr(l_1_loop, 'index0')
        _loop_vars['part'] = l_1_part
        yield '<section class="part level-'
        yield escape((2 if (environment.getattr(l_1_section, 'level') <= 2) else 3))
        yield escape((' bare' if (not environment.getattr(l_1_section, 'lines')) else cond_expr_undefined("the inline if-expression on line 202 in 'parts.html' evaluated to false and no else section was defined.")))
        yield ' '
        yield escape(t_13(l_1_section))
        yield ' '
        yield escape(t_5(l_1_section))
        yield '">\n'
        if environment.getattr(l_1_section, 'heading'):
            pass
            if (environment.getattr(l_1_section, 'level') <= 2):
                pass
                yield '<h2 id="part-'
                yield escape(environment.getattr(l_1_loop, 'index'))
                yield '">'
                yield escape(environment.getattr(l_1_section, 'heading'))
                yield '</h2>\n'
            else:
                pass
                yield '<h3>'
                yield escape(environment.getattr(l_1_section, 'heading'))
                yield '</h3>\n'
        if environment.getattr(l_1_section, 'lines'):
            pass
            yield '<ul class="lines" role="list">\n'
            l_2_loop = missing
            for (l_2_line, l_2_tag), l_2_loop in LoopContext(t_14(l_1_section), undefined):
                l_2_web = resolve('web')
                _loop_vars = {}
                pass
                yield '<li class="'
                yield escape(environment.getattr(l_2_line, 'kind'))
                yield escape((' change' if l_2_tag else cond_expr_undefined("the inline if-expression on line 213 in 'parts.html' evaluated to false and no else section was defined.")))
                yield '"'
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
                yield escape((t_9(environment.getattr(l_2_line, 'text'), (undefined(name='web') if l_2_web is missing else l_2_web)) if (undefined(name='web') if l_2_web is missing else l_2_web) else environment.getattr(l_2_line, 'text')))
                yield '</span>'
                if environment.getattr(l_2_line, 'count'):
                    pass
                    yield ' <span class="count">'
                    yield escape(environment.getattr(l_2_line, 'count'))
                    yield '</span>'
                if t_1(l_2_line):
                    pass
                    yield '<span class="tallies" aria-hidden="true">\n'
                    l_3_loop = missing
                    for l_3_number, l_3_loop in LoopContext(t_1(l_2_line), undefined):
                        l_3_range = resolve('range')
                        _loop_vars = {}
                        pass
                        yield '<span class="tally">'
                        if ((t_7(t_1(l_2_line)) > 1) and (environment.getattr(l_3_loop, 'index0') < t_7(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'sizes')))):
                            pass
                            yield '<i>'
                            yield escape(environment.getitem(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'sizes'), environment.getattr(l_3_loop, 'index0')))
                            yield '</i>'
                        l_4_loop = missing
                        for l_4_box, l_4_loop in LoopContext(context.call((undefined(name='range') if l_3_range is missing else l_3_range), l_3_number, _loop_vars=_loop_vars), undefined):
                            _loop_vars = {}
                            pass
                            yield '<span class="box'
                            yield escape((' five' if t_16(environment.getattr(l_4_loop, 'index'), 5) else cond_expr_undefined("the inline if-expression on line 221 in 'parts.html' evaluated to false and no else section was defined.")))
                            yield '"></span>'
                        l_4_loop = l_4_box = missing
                        yield '</span>\n'
                    l_3_loop = l_3_number = l_3_range = missing
                    yield '</span>'
                yield '</li>\n'
            l_2_loop = l_2_line = l_2_tag = l_2_web = missing
            yield '</ul>\n'
        yield '</section>\n'
    l_1_loop = l_1_section = l_1_part = missing

blocks = {}
debug_info = '1=110&2=115&3=120&6=135&7=144&8=148&9=152&10=157&11=163&16=174&19=176&20=180&21=183&23=187&24=190&26=192&28=195&29=198&31=202&32=205&37=213&39=216&40=218&41=221&42=224&44=226&45=231&50=236&53=239&55=248&56=253&62=271&63=275&67=279&68=282&70=285&71=288&72=291&78=297&80=300&83=302&84=305&86=308&88=318&89=323&97=342&98=345&102=356&103=358&104=360&106=362&108=365&109=367&110=372&112=375&115=378&117=387&118=392&126=413&127=418&129=421&130=423&131=425&132=427&134=430&136=432&138=436&139=440&146=454&148=457&149=459&150=463&151=468&152=477&154=481&155=483&156=487&161=496&163=511&164=515&174=539&176=542&177=545&179=549&180=552&182=555&185=557&187=566&188=571&192=589&193=592&200=598&201=602&202=605&203=612&204=614&205=617&207=624&210=626&212=630&213=635&214=646&215=653&216=659&217=661&218=666&220=670&221=675'

MARK = '3.1.6 8616 df9041c3'
