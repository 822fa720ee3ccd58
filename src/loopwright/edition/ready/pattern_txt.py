"""A template, compiled by Jinja. Written by ``make records``; not to be edited."""

# ruff: noqa
# mypy: ignore-errors

from jinja2.runtime import LoopContext, Macro, Markup, Namespace, TemplateNotFound, TemplateReference, TemplateRuntimeError, Undefined, escape, identity, internalcode, markup_join, missing, str_join
name = 'pattern.txt'

def root(context, missing=missing):
    resolve = context.resolve_or_missing
    undefined = environment.undefined
    concat = environment.concat
    cond_expr_undefined = Undefined
    if 0: yield None
    l_0_doc = resolve('doc')
    l_0_heading = resolve('heading')
    l_0_shades = resolve('shades')
    l_0_abbreviations = resolve('abbreviations')
    l_0_title = l_0_listed = l_0_aligned = missing
    try:
        t_1 = environment.filters['join']
    except KeyError:
        @internalcode
        def t_1(*unused):
            raise TemplateRuntimeError("No filter named 'join' found.")
    pass
    def macro(l_1_text, l_1_mark):
        t_2 = []
        l_1_rule = resolve('rule')
        if l_1_text is missing:
            l_1_text = undefined("parameter 'text' was not provided", name='text')
        if l_1_mark is missing:
            l_1_mark = undefined("parameter 'mark' was not provided", name='mark')
        pass
        t_2.extend((
            str(l_1_text),
            '\n',
            str(context.call((undefined(name='rule') if l_1_rule is missing else l_1_rule), l_1_text, l_1_mark)),
            '\n',
        ))
        return concat(t_2)
    context.exported_vars.add('title')
    context.vars['title'] = l_0_title = Macro(environment, macro, 'title', ('text', 'mark'), False, False, False, context.eval_ctx.autoescape)
    def macro(l_1_name, l_1_items):
        t_3 = []
        if l_1_name is missing:
            l_1_name = undefined("parameter 'name' was not provided", name='name')
        if l_1_items is missing:
            l_1_items = undefined("parameter 'items' was not provided", name='items')
        pass
        if l_1_items:
            pass
            t_3.extend((
                '\n',
                str(context.call((undefined(name='title') if l_0_title is missing else l_0_title), context.call(environment.getattr(environment.getitem((undefined(name='heading') if l_0_heading is missing else l_0_heading), l_1_name), 'upper')), '-')),
            ))
            for l_2_item in l_1_items:
                _loop_vars = {}
                pass
                t_3.extend((
                    str(l_2_item),
                    '\n',
                ))
            l_2_item = missing
        return concat(t_3)
    context.exported_vars.add('listed')
    context.vars['listed'] = l_0_listed = Macro(environment, macro, 'listed', ('name', 'items'), False, False, False, context.eval_ctx.autoescape)
    def macro(l_1_rows):
        t_4 = []
        l_1_columns = resolve('columns')
        if l_1_rows is missing:
            l_1_rows = undefined("parameter 'rows' was not provided", name='rows')
        pass
        for l_2_row in context.call((undefined(name='columns') if l_1_columns is missing else l_1_columns), l_1_rows):
            _loop_vars = {}
            pass
            t_4.extend((
                str(l_2_row),
                '\n',
            ))
        l_2_row = missing
        return concat(t_4)
    context.exported_vars.add('aligned')
    context.vars['aligned'] = l_0_aligned = Macro(environment, macro, 'aligned', ('rows',), False, False, False, context.eval_ctx.autoescape)
    yield str(context.call((undefined(name='title') if l_0_title is missing else l_0_title), context.call(environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'title'), 'upper')), '='))
    if environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'designer'):
        pass
        yield str(environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'by'))
        yield ' '
        yield str(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'designer'))
        yield '\n'
    yield '\n'
    yield str(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'summary'))
    yield '\n\n'
    if environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'level'):
        pass
        yield str(environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'level'))
        yield str(environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'colon'))
        yield ' '
        yield str(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'level'))
        yield '\n'
    if environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'sizes'):
        pass
        yield str(environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'sizes'))
        yield str(environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'colon'))
        yield ' '
        yield str(t_1(context.eval_ctx, environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'sizes'), ', '))
        yield '\n'
    yield '\n'
    if environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'personal'):
        pass
        yield '\n'
        yield str(context.call((undefined(name='title') if l_0_title is missing else l_0_title), context.call(environment.getattr(environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'personal'), 'upper')), '-'))
        if environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'personal'), 'asked'):
            pass
            yield str(environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'asked'))
            yield '\n'
            for l_1_text in environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'personal'), 'asked'):
                _loop_vars = {}
                pass
                yield str(l_1_text)
                yield '\n'
            l_1_text = missing
        yield '\n'
        yield str(environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'made_for'))
        yield '\n'
        for l_1_text in environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'personal'), 'made_for'):
            _loop_vars = {}
            pass
            yield str(l_1_text)
            yield '\n'
        l_1_text = missing
        yield '\n'
        if environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'personal'), 'changes'):
            pass
            yield str(context.call((undefined(name='aligned') if l_0_aligned is missing else l_0_aligned), ((environment.getattr(environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'personal'), 'changes'), 'head'),) + environment.getattr(environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'personal'), 'changes'), 'rows'))))
        for l_1_note in environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'personal'), 'notes'):
            _loop_vars = {}
            pass
            yield str(l_1_note)
            yield '\n'
        l_1_note = missing
        yield '\n'
    for l_1_notice in environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'notices'):
        _loop_vars = {}
        pass
        yield str(l_1_notice)
        yield '\n'
    l_1_notice = missing
    if environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'finished'):
        pass
        yield '\n'
        yield str(context.call((undefined(name='title') if l_0_title is missing else l_0_title), context.call(environment.getattr(environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'finished'), 'upper')), '-'))
        if environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'finished'), 'caption'):
            pass
            yield str(environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'finished'), 'caption'))
            yield '\n'
        yield str(context.call((undefined(name='aligned') if l_0_aligned is missing else l_0_aligned), ((environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'finished'), 'head'),) + environment.getattr(environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'finished'), 'rows'))))
    yield str(context.call((undefined(name='listed') if l_0_listed is missing else l_0_listed), 'gauge', environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'gauge')))
    yield str(context.call((undefined(name='listed') if l_0_listed is missing else l_0_listed), 'needles', environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'needles')))
    if (environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'yarns') or environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'shades')):
        pass
        yield '\n'
        yield str(context.call((undefined(name='title') if l_0_title is missing else l_0_title), context.call(environment.getattr(environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'yarn'), 'upper')), '-'))
        for l_1_yarn in environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'yarns'):
            _loop_vars = {}
            pass
            yield str(l_1_yarn)
            yield '\n'
        l_1_yarn = missing
        if environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'shades'):
            pass
            yield '\n'
            yield str(context.call((undefined(name='aligned') if l_0_aligned is missing else l_0_aligned), (undefined(name='shades') if l_0_shades is missing else l_0_shades)))
    yield str(context.call((undefined(name='listed') if l_0_listed is missing else l_0_listed), 'substitution', environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'substitution')))
    yield str(context.call((undefined(name='listed') if l_0_listed is missing else l_0_listed), 'notions', environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'notions')))
    yield str(context.call((undefined(name='listed') if l_0_listed is missing else l_0_listed), 'cautions', environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'cautions')))
    yield str(context.call((undefined(name='listed') if l_0_listed is missing else l_0_listed), 'notes', environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'notes')))
    yield str(context.call((undefined(name='listed') if l_0_listed is missing else l_0_listed), 'care', environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'care')))
    yield str(context.call((undefined(name='listed') if l_0_listed is missing else l_0_listed), 'skills', environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'skills')))
    if environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'abbreviations'):
        pass
        yield '\n'
        yield str(context.call((undefined(name='title') if l_0_title is missing else l_0_title), context.call(environment.getattr(environment.getattr((undefined(name='heading') if l_0_heading is missing else l_0_heading), 'abbreviations'), 'upper')), '-'))
        yield str(context.call((undefined(name='aligned') if l_0_aligned is missing else l_0_aligned), (undefined(name='abbreviations') if l_0_abbreviations is missing else l_0_abbreviations)))
    for l_1_section in environment.getattr((undefined(name='doc') if l_0_doc is missing else l_0_doc), 'sections'):
        _loop_vars = {}
        pass
        yield '\n'
        if environment.getattr(l_1_section, 'heading'):
            pass
            yield str(context.call((undefined(name='title') if l_0_title is missing else l_0_title), (context.call(environment.getattr(environment.getattr(l_1_section, 'heading'), 'upper'), _loop_vars=_loop_vars) if (environment.getattr(l_1_section, 'level') <= 2) else environment.getattr(l_1_section, 'heading')), '-', _loop_vars=_loop_vars))
        for l_2_line in environment.getattr(l_1_section, 'lines'):
            l_2_one_line = resolve('one_line')
            _loop_vars = {}
            pass
            yield str(context.call((undefined(name='one_line') if l_2_one_line is missing else l_2_one_line), l_2_line, _loop_vars=_loop_vars))
            yield '\n'
        l_2_line = l_2_one_line = missing
    l_1_section = missing

blocks = {}
debug_info = '1=22&2=31&3=33&5=39&6=46&8=50&9=52&10=56&14=63&15=69&16=73&19=80&20=81&21=83&24=88&26=90&27=92&29=97&30=99&33=105&35=108&36=109&37=111&38=113&39=116&43=120&44=122&45=125&48=129&49=131&51=132&52=135&56=139&57=142&59=145&61=148&62=149&63=151&65=153&67=154&68=155&69=156&71=159&72=160&73=163&75=166&77=169&80=170&81=171&82=172&83=173&84=174&85=175&86=176&88=179&89=180&91=181&93=185&94=187&96=188&97=192'

MARK = '3.1.6 2228 5509f465'
