"""Generated from shared/schema by `python3 -m web contract`. Do not edit.

One function for each message; it returns the message or raises SchemaRefusal.
"""

# ruff: noqa
# mypy: ignore-errors

from pycore.desk.contract.refusal import SchemaRefusal as JsonSchemaValueException

JsonSchemaValuesException = JsonSchemaValueException
VERSION = '2.22.3'
from decimal import Decimal
import re
REGEX_PATTERNS = {'^[0-9a-f]{32}$': re.compile('^[0-9a-f]{32}\\Z'), '^[2-9A-HJKMNP-Z]{5}$': re.compile('^[2-9A-HJKMNP-Z]{5}\\Z'), '^([0-9a-f]{64})?$': re.compile('^([0-9a-f]{64})?\\Z'), '^[0-9a-f]{64}$': re.compile('^[0-9a-f]{64}\\Z')}
NoneType = type(None)

def validate___definitions_withdrawal_content(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['retracts', 'reason']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['retracts', 'reason']}, rule='required')
        data_keys = set(data.keys())
        if 'retracts' in data_keys:
            data_keys.remove('retracts')
            data__retracts = data['retracts']
            validate___definitions_entry_id(data__retracts, custom_formats, (name_prefix or 'data') + '.retracts')
        if 'settles' in data_keys:
            data_keys.remove('settles')
            data__settles = data['settles']
            if not isinstance(data__settles, (list, tuple)):
                raise JsonSchemaValueException('type', value=data__settles, name='' + (name_prefix or 'data') + '.settles', definition={'type': 'array'}, rule='type')
            data__settles_is_list = isinstance(data__settles, (list, tuple))
            if data__settles_is_list:
                data__settles_len = len(data__settles)
                if data__settles_len > 50:
                    raise JsonSchemaValueException('maxItems', value=data__settles, name='' + (name_prefix or 'data') + '.settles', definition={'maxItems': 50}, rule='maxItems')
                for data__settles_x, data__settles_item in enumerate(data__settles):
                    validate___definitions_entry_id(data__settles_item, custom_formats, (name_prefix or 'data') + '.settles[{data__settles_x}]'.format(**locals()))
        if 'reason' in data_keys:
            data_keys.remove('reason')
            data__reason = data['reason']
            validate___definitions_reason(data__reason, custom_formats, (name_prefix or 'data') + '.reason')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_reason(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, str):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'string'}, rule='type')
    if isinstance(data, str):
        data_len = len(data)
        if data_len < 1:
            raise JsonSchemaValueException('minLength', value=data, name='' + (name_prefix or 'data') + '', definition={'minLength': 1}, rule='minLength')
        if data_len > 2000:
            raise JsonSchemaValueException('maxLength', value=data, name='' + (name_prefix or 'data') + '', definition={'maxLength': 2000}, rule='maxLength')
    return data

def validate___definitions_entry_id(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, str):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'string'}, rule='type')
    if isinstance(data, str):
        if not REGEX_PATTERNS['^[0-9a-f]{32}$'].search(data):
            raise JsonSchemaValueException('pattern', value=data, name='' + (name_prefix or 'data') + '', definition={'pattern': '^[0-9a-f]{32}$'}, rule='pattern')
    return data

def validate___definitions_unknown_addition_content(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set([]) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': []}, rule='required')
        data_keys = set(data.keys())
        if 'what' in data_keys:
            data_keys.remove('what')
            data__what = data['what']
            if not isinstance(data__what, str):
                raise JsonSchemaValueException('type', value=data__what, name='' + (name_prefix or 'data') + '.what', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__what, str) and data__what == 'water' or (isinstance(data__what, str) and data__what == 'mix') or (isinstance(data__what, str) and data__what == 'concentrate') or (isinstance(data__what, str) and data__what == 'unknown')):
                raise JsonSchemaValueException('enum', value=data__what, name='' + (name_prefix or 'data') + '.what', definition={'enum': ['water', 'mix', 'concentrate', 'unknown']}, rule='enum')
        if 'remarks' in data_keys:
            data_keys.remove('remarks')
            data__remarks = data['remarks']
            validate___definitions_remarks(data__remarks, custom_formats, (name_prefix or 'data') + '.remarks')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_remarks(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, str):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'string'}, rule='type')
    if isinstance(data, str):
        data_len = len(data)
        if data_len > 2000:
            raise JsonSchemaValueException('maxLength', value=data, name='' + (name_prefix or 'data') + '', definition={'maxLength': 2000}, rule='maxLength')
    return data

def validate___definitions_shop_set_content(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set([]) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': []}, rule='required')
        data_keys = set(data.keys())
        if 'who_to_ask' in data_keys:
            data_keys.remove('who_to_ask')
            data__whotoask = data['who_to_ask']
            validate___definitions_short_text(data__whotoask, custom_formats, (name_prefix or 'data') + '.who_to_ask')
        if 'look_limits' in data_keys:
            data_keys.remove('look_limits')
            data__looklimits = data['look_limits']
            validate___definitions_look_limits(data__looklimits, custom_formats, (name_prefix or 'data') + '.look_limits')
        if 'check_every_d' in data_keys:
            data_keys.remove('check_every_d')
            data__checkeveryd = data['check_every_d']
            validate___definitions_typed(data__checkeveryd, custom_formats, (name_prefix or 'data') + '.check_every_d')
        if 'clean_out_every_d' in data_keys:
            data_keys.remove('clean_out_every_d')
            data__cleanouteveryd = data['clean_out_every_d']
            validate___definitions_typed(data__cleanouteveryd, custom_formats, (name_prefix or 'data') + '.clean_out_every_d')
        if 'most_lost_pct_d' in data_keys:
            data_keys.remove('most_lost_pct_d')
            data__mostlostpctd = data['most_lost_pct_d']
            validate___definitions_typed(data__mostlostpctd, custom_formats, (name_prefix or 'data') + '.most_lost_pct_d')
        if 'remarks' in data_keys:
            data_keys.remove('remarks')
            data__remarks = data['remarks']
            validate___definitions_remarks(data__remarks, custom_formats, (name_prefix or 'data') + '.remarks')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_typed(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['text']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['text']}, rule='required')
        data_keys = set(data.keys())
        if 'text' in data_keys:
            data_keys.remove('text')
            data__text = data['text']
            if not isinstance(data__text, str):
                raise JsonSchemaValueException('type', value=data__text, name='' + (name_prefix or 'data') + '.text', definition={'type': 'string'}, rule='type')
            if isinstance(data__text, str):
                data__text_len = len(data__text)
                if data__text_len > 40:
                    raise JsonSchemaValueException('maxLength', value=data__text, name='' + (name_prefix or 'data') + '.text', definition={'maxLength': 40}, rule='maxLength')
        if 'unit' in data_keys:
            data_keys.remove('unit')
            data__unit = data['unit']
            validate___definitions_unit(data__unit, custom_formats, (name_prefix or 'data') + '.unit')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_unit(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, str):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'string'}, rule='type')
    if not (isinstance(data, str) and data == 'mm' or (isinstance(data, str) and data == 'cm') or (isinstance(data, str) and data == 'm') or (isinstance(data, str) and data == 'in') or (isinstance(data, str) and data == 'ft') or (isinstance(data, str) and data == 'L') or (isinstance(data, str) and data == 'mL') or (isinstance(data, str) and data == 'US gal') or (isinstance(data, str) and data == 'US qt') or (isinstance(data, str) and data == 'US pt') or (isinstance(data, str) and data == 'US fl oz') or (isinstance(data, str) and data == 'imp gal') or (isinstance(data, str) and data == 'imp qt') or (isinstance(data, str) and data == 'imp pt') or (isinstance(data, str) and data == 'imp fl oz') or (isinstance(data, str) and data == '°C') or (isinstance(data, str) and data == '°F') or (isinstance(data, str) and data == 'kg') or (isinstance(data, str) and data == 'lb') or (isinstance(data, str) and data == '%') or (isinstance(data, str) and data == 'Brix') or (isinstance(data, str) and data == 'nD') or (isinstance(data, str) and data == 'mg/L') or (isinstance(data, str) and data == 'mg/L CaCO₃') or (isinstance(data, str) and data == '°dH') or (isinstance(data, str) and data == '°fH') or (isinstance(data, str) and data == 'gpg') or (isinstance(data, str) and data == 'mmol/L') or (isinstance(data, str) and data == 'CFU/mL') or (isinstance(data, str) and data == 'kg/L') or (isinstance(data, str) and data == 'lb/US gal') or (isinstance(data, str) and data == '1')):
        raise JsonSchemaValueException('enum', value=data, name='' + (name_prefix or 'data') + '', definition={'enum': ['mm', 'cm', 'm', 'in', 'ft', 'L', 'mL', 'US gal', 'US qt', 'US pt', 'US fl oz', 'imp gal', 'imp qt', 'imp pt', 'imp fl oz', '°C', '°F', 'kg', 'lb', '%', 'Brix', 'nD', 'mg/L', 'mg/L CaCO₃', '°dH', '°fH', 'gpg', 'mmol/L', 'CFU/mL', 'kg/L', 'lb/US gal', '1']}, rule='enum')
    return data

def validate___definitions_look_limits(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set([]) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': []}, rule='required')
        data_keys = set(data.keys())
        if 'ph_low' in data_keys:
            data_keys.remove('ph_low')
            data__phlow = data['ph_low']
            validate___definitions_typed(data__phlow, custom_formats, (name_prefix or 'data') + '.ph_low')
        if 'ph_high' in data_keys:
            data_keys.remove('ph_high')
            data__phhigh = data['ph_high']
            validate___definitions_typed(data__phhigh, custom_formats, (name_prefix or 'data') + '.ph_high')
        if 'ph_drop' in data_keys:
            data_keys.remove('ph_drop')
            data__phdrop = data['ph_drop']
            validate___definitions_typed(data__phdrop, custom_formats, (name_prefix or 'data') + '.ph_drop')
        if 'ph_drop_far' in data_keys:
            data_keys.remove('ph_drop_far')
            data__phdropfar = data['ph_drop_far']
            validate___definitions_typed(data__phdropfar, custom_formats, (name_prefix or 'data') + '.ph_drop_far')
        if 'nitrite_most' in data_keys:
            data_keys.remove('nitrite_most')
            data__nitritemost = data['nitrite_most']
            validate___definitions_typed(data__nitritemost, custom_formats, (name_prefix or 'data') + '.nitrite_most')
        if 'cold' in data_keys:
            data_keys.remove('cold')
            data__cold = data['cold']
            validate___definitions_typed(data__cold, custom_formats, (name_prefix or 'data') + '.cold')
        if 'warm' in data_keys:
            data_keys.remove('warm')
            data__warm = data['warm']
            validate___definitions_typed(data__warm, custom_formats, (name_prefix or 'data') + '.warm')
        if 'dip_slide' in data_keys:
            data_keys.remove('dip_slide')
            data__dipslide = data['dip_slide']
            validate___definitions_look_slide_limits(data__dipslide, custom_formats, (name_prefix or 'data') + '.dip_slide')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_look_slide_limits(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['scheme', 'review', 'act']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['scheme', 'review', 'act']}, rule='required')
        data_keys = set(data.keys())
        if 'scheme' in data_keys:
            data_keys.remove('scheme')
            data__scheme = data['scheme']
            if not isinstance(data__scheme, str):
                raise JsonSchemaValueException('type', value=data__scheme, name='' + (name_prefix or 'data') + '.scheme', definition={'type': 'string'}, rule='type')
            if isinstance(data__scheme, str):
                data__scheme_len = len(data__scheme)
                if data__scheme_len < 1:
                    raise JsonSchemaValueException('minLength', value=data__scheme, name='' + (name_prefix or 'data') + '.scheme', definition={'minLength': 1}, rule='minLength')
                if data__scheme_len > 80:
                    raise JsonSchemaValueException('maxLength', value=data__scheme, name='' + (name_prefix or 'data') + '.scheme', definition={'maxLength': 80}, rule='maxLength')
        if 'review' in data_keys:
            data_keys.remove('review')
            data__review = data['review']
            validate___definitions_typed(data__review, custom_formats, (name_prefix or 'data') + '.review')
        if 'act' in data_keys:
            data_keys.remove('act')
            data__act = data['act']
            validate___definitions_typed(data__act, custom_formats, (name_prefix or 'data') + '.act')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_short_text(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, str):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'string'}, rule='type')
    if isinstance(data, str):
        data_len = len(data)
        if data_len > 80:
            raise JsonSchemaValueException('maxLength', value=data, name='' + (name_prefix or 'data') + '', definition={'maxLength': 80}, rule='maxLength')
    return data

def validate___definitions_recheck_content(data, custom_formats={}, name_prefix=None):
    validate___definitions_check_content(data, custom_formats, (name_prefix or 'data') + '')
    return data

def validate___definitions_pour_content(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['pours', 'finished']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['pours', 'finished']}, rule='required')
        data_keys = set(data.keys())
        if 'plan' in data_keys:
            data_keys.remove('plan')
            data__plan = data['plan']
            validate___definitions_entry_id(data__plan, custom_formats, (name_prefix or 'data') + '.plan')
        if 'pours' in data_keys:
            data_keys.remove('pours')
            data__pours = data['pours']
            validate___definitions_bucket_rows(data__pours, custom_formats, (name_prefix or 'data') + '.pours')
        if 'finished' in data_keys:
            data_keys.remove('finished')
            data__finished = data['finished']
            if not isinstance(data__finished, bool):
                raise JsonSchemaValueException('type', value=data__finished, name='' + (name_prefix or 'data') + '.finished', definition={'type': 'boolean'}, rule='type')
        if 'draw_off' in data_keys:
            data_keys.remove('draw_off')
            data__drawoff = data['draw_off']
            validate___definitions_typed(data__drawoff, custom_formats, (name_prefix or 'data') + '.draw_off')
        if 'recheck_due_at' in data_keys:
            data_keys.remove('recheck_due_at')
            data__recheckdueat = data['recheck_due_at']
            validate___definitions_moment(data__recheckdueat, custom_formats, (name_prefix or 'data') + '.recheck_due_at')
        if 'lot' in data_keys:
            data_keys.remove('lot')
            data__lot = data['lot']
            validate___definitions_short_text(data__lot, custom_formats, (name_prefix or 'data') + '.lot')
        if 'looked_even' in data_keys:
            data_keys.remove('looked_even')
            data__lookedeven = data['looked_even']
            if not isinstance(data__lookedeven, bool):
                raise JsonSchemaValueException('type', value=data__lookedeven, name='' + (name_prefix or 'data') + '.looked_even', definition={'type': 'boolean'}, rule='type')
        if 'remarks' in data_keys:
            data_keys.remove('remarks')
            data__remarks = data['remarks']
            validate___definitions_remarks(data__remarks, custom_formats, (name_prefix or 'data') + '.remarks')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_moment(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, str):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'string'}, rule='type')
    if isinstance(data, str):
        data_len = len(data)
        if data_len > 40:
            raise JsonSchemaValueException('maxLength', value=data, name='' + (name_prefix or 'data') + '', definition={'maxLength': 40}, rule='maxLength')
    return data

def validate___definitions_bucket_rows(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, (list, tuple)):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'array'}, rule='type')
    data_is_list = isinstance(data, (list, tuple))
    if data_is_list:
        data_len = len(data)
        if data_len > 200:
            raise JsonSchemaValueException('maxItems', value=data, name='' + (name_prefix or 'data') + '', definition={'maxItems': 200}, rule='maxItems')
        for data_x, data_item in enumerate(data):
            validate___definitions_bucket_row(data_item, custom_formats, (name_prefix or 'data') + '[{data_x}]'.format(**locals()))
    return data

def validate___definitions_bucket_row(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['count']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['count']}, rule='required')
        data_keys = set(data.keys())
        if 'count' in data_keys:
            data_keys.remove('count')
            data__count = data['count']
            if not isinstance(data__count, int) and (not (isinstance(data__count, float) and data__count.is_integer())) or isinstance(data__count, bool):
                raise JsonSchemaValueException('type', value=data__count, name='' + (name_prefix or 'data') + '.count', definition={'type': 'integer'}, rule='type')
            if isinstance(data__count, (int, float, Decimal)) and (not isinstance(data__count, bool)):
                if data__count < 1:
                    raise JsonSchemaValueException('minimum', value=data__count, name='' + (name_prefix or 'data') + '.count', definition={'minimum': 1}, rule='minimum')
                if data__count > 1000:
                    raise JsonSchemaValueException('maximum', value=data__count, name='' + (name_prefix or 'data') + '.count', definition={'maximum': 1000}, rule='maximum')
        if 'kind' in data_keys:
            data_keys.remove('kind')
            data__kind = data['kind']
            if not isinstance(data__kind, str):
                raise JsonSchemaValueException('type', value=data__kind, name='' + (name_prefix or 'data') + '.kind', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__kind, str) and data__kind == 'mix' or (isinstance(data__kind, str) and data__kind == 'water') or (isinstance(data__kind, str) and data__kind == 'concentrate') or (isinstance(data__kind, str) and data__kind == 'own_fluid') or (isinstance(data__kind, str) and data__kind == 'ready_mix') or (isinstance(data__kind, str) and data__kind == 'unknown')):
                raise JsonSchemaValueException('enum', value=data__kind, name='' + (name_prefix or 'data') + '.kind', definition={'enum': ['mix', 'water', 'concentrate', 'own_fluid', 'ready_mix', 'unknown']}, rule='enum')
        if 'each' in data_keys:
            data_keys.remove('each')
            data__each = data['each']
            validate___definitions_typed(data__each, custom_formats, (name_prefix or 'data') + '.each')
        if 'water' in data_keys:
            data_keys.remove('water')
            data__water = data['water']
            validate___definitions_typed(data__water, custom_formats, (name_prefix or 'data') + '.water')
        if 'concentrate' in data_keys:
            data_keys.remove('concentrate')
            data__concentrate = data['concentrate']
            validate___definitions_typed(data__concentrate, custom_formats, (name_prefix or 'data') + '.concentrate')
        if 'strength' in data_keys:
            data_keys.remove('strength')
            data__strength = data['strength']
            validate___definitions_typed(data__strength, custom_formats, (name_prefix or 'data') + '.strength')
        if 'about' in data_keys:
            data_keys.remove('about')
            data__about = data['about']
            if not isinstance(data__about, bool):
                raise JsonSchemaValueException('type', value=data__about, name='' + (name_prefix or 'data') + '.about', definition={'type': 'boolean'}, rule='type')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_plan_content(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['pours']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['pours']}, rule='required')
        data_keys = set(data.keys())
        if 'check' in data_keys:
            data_keys.remove('check')
            data__check = data['check']
            validate___definitions_entry_id(data__check, custom_formats, (name_prefix or 'data') + '.check')
        if 'pours' in data_keys:
            data_keys.remove('pours')
            data__pours = data['pours']
            validate___definitions_bucket_rows(data__pours, custom_formats, (name_prefix or 'data') + '.pours')
        if 'draw_off' in data_keys:
            data_keys.remove('draw_off')
            data__drawoff = data['draw_off']
            validate___definitions_typed(data__drawoff, custom_formats, (name_prefix or 'data') + '.draw_off')
        if 'way' in data_keys:
            data_keys.remove('way')
            data__way = data['way']
            validate___definitions_short_text(data__way, custom_formats, (name_prefix or 'data') + '.way')
        if 'remarks' in data_keys:
            data_keys.remove('remarks')
            data__remarks = data['remarks']
            validate___definitions_remarks(data__remarks, custom_formats, (name_prefix or 'data') + '.remarks')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_note_content(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['text']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['text']}, rule='required')
        data_keys = set(data.keys())
        if 'text' in data_keys:
            data_keys.remove('text')
            data__text = data['text']
            validate___definitions_reason(data__text, custom_formats, (name_prefix or 'data') + '.text')
        if 'until' in data_keys:
            data_keys.remove('until')
            data__until = data['until']
            validate___definitions_moment(data__until, custom_formats, (name_prefix or 'data') + '.until')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_machine_state_content(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['state']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['state']}, rule='required')
        data_keys = set(data.keys())
        if 'state' in data_keys:
            data_keys.remove('state')
            data__state = data['state']
            if not isinstance(data__state, str):
                raise JsonSchemaValueException('type', value=data__state, name='' + (name_prefix or 'data') + '.state', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__state, str) and data__state == 'in_use' or (isinstance(data__state, str) and data__state == 'watch') or (isinstance(data__state, str) and data__state == 'on_hold') or (isinstance(data__state, str) and data__state == 'stopped') or (isinstance(data__state, str) and data__state == 'clean_out') or (isinstance(data__state, str) and data__state == 'out_of_service') or (isinstance(data__state, str) and data__state == 'shutdown')):
                raise JsonSchemaValueException('enum', value=data__state, name='' + (name_prefix or 'data') + '.state', definition={'enum': ['in_use', 'watch', 'on_hold', 'stopped', 'clean_out', 'out_of_service', 'shutdown']}, rule='enum')
        if 'reason' in data_keys:
            data_keys.remove('reason')
            data__reason = data['reason']
            if not isinstance(data__reason, str):
                raise JsonSchemaValueException('type', value=data__reason, name='' + (name_prefix or 'data') + '.reason', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__reason, str) and data__reason == 'wrong_drum' or (isinstance(data__reason, str) and data__reason == 'split') or (isinstance(data__reason, str) and data__reason == 'smell') or (isinstance(data__reason, str) and data__reason == 'leak') or (isinstance(data__reason, str) and data__reason == 'water_getting_in') or (isinstance(data__reason, str) and data__reason == 'overfilled') or (isinstance(data__reason, str) and data__reason == 'ran_dry') or (isinstance(data__reason, str) and data__reason == 'lumpy_mix') or (isinstance(data__reason, str) and data__reason == 'cleaner_in_it') or (isinstance(data__reason, str) and data__reason == 'hydraulic_oil') or (isinstance(data__reason, str) and data__reason == 'neat_concentrate') or (isinstance(data__reason, str) and data__reason == 'lab_sample') or (isinstance(data__reason, str) and data__reason == 'dose_in_progress') or (isinstance(data__reason, str) and data__reason == 'holiday') or (isinstance(data__reason, str) and data__reason == 'repair') or (isinstance(data__reason, str) and data__reason == 'other')):
                raise JsonSchemaValueException('enum', value=data__reason, name='' + (name_prefix or 'data') + '.reason', definition={'enum': ['wrong_drum', 'split', 'smell', 'leak', 'water_getting_in', 'overfilled', 'ran_dry', 'lumpy_mix', 'cleaner_in_it', 'hydraulic_oil', 'neat_concentrate', 'lab_sample', 'dose_in_progress', 'holiday', 'repair', 'other']}, rule='enum')
        if 'until' in data_keys:
            data_keys.remove('until')
            data__until = data['until']
            validate___definitions_moment(data__until, custom_formats, (name_prefix or 'data') + '.until')
        if 'remarks' in data_keys:
            data_keys.remove('remarks')
            data__remarks = data['remarks']
            validate___definitions_remarks(data__remarks, custom_formats, (name_prefix or 'data') + '.remarks')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_machine_set_content(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['machine']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['machine']}, rule='required')
        data_keys = set(data.keys())
        if 'machine' in data_keys:
            data_keys.remove('machine')
            data__machine = data['machine']
            validate___definitions_machine_typed(data__machine, custom_formats, (name_prefix or 'data') + '.machine')
        if 'code' in data_keys:
            data_keys.remove('code')
            data__code = data['code']
            validate___definitions_short_code(data__code, custom_formats, (name_prefix or 'data') + '.code')
        if 'remarks' in data_keys:
            data_keys.remove('remarks')
            data__remarks = data['remarks']
            validate___definitions_remarks(data__remarks, custom_formats, (name_prefix or 'data') + '.remarks')
        if 'pour_test' in data_keys:
            data_keys.remove('pour_test')
            data__pourtest = data['pour_test']
            validate___definitions_calibrate_sump_body(data__pourtest, custom_formats, (name_prefix or 'data') + '.pour_test')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_short_code(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, str):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'string'}, rule='type')
    if isinstance(data, str):
        if not REGEX_PATTERNS['^[2-9A-HJKMNP-Z]{5}$'].search(data):
            raise JsonSchemaValueException('pattern', value=data, name='' + (name_prefix or 'data') + '', definition={'pattern': '^[2-9A-HJKMNP-Z]{5}$'}, rule='pattern')
    return data

def validate___definitions_machine_typed(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['name', 'sump', 'fluid', 'target', 'mixing', 'bucket', 'units']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['name', 'sump', 'fluid', 'target', 'mixing', 'bucket', 'units']}, rule='required')
        data_keys = set(data.keys())
        if 'name' in data_keys:
            data_keys.remove('name')
            data__name = data['name']
            if not isinstance(data__name, str):
                raise JsonSchemaValueException('type', value=data__name, name='' + (name_prefix or 'data') + '.name', definition={'type': 'string'}, rule='type')
            if isinstance(data__name, str):
                data__name_len = len(data__name)
                if data__name_len < 1:
                    raise JsonSchemaValueException('minLength', value=data__name, name='' + (name_prefix or 'data') + '.name', definition={'minLength': 1}, rule='minLength')
                if data__name_len > 80:
                    raise JsonSchemaValueException('maxLength', value=data__name, name='' + (name_prefix or 'data') + '.name', definition={'maxLength': 80}, rule='maxLength')
        if 'sump' in data_keys:
            data_keys.remove('sump')
            data__sump = data['sump']
            validate___definitions_sump_typed(data__sump, custom_formats, (name_prefix or 'data') + '.sump')
        if 'fluid' in data_keys:
            data_keys.remove('fluid')
            data__fluid = data['fluid']
            validate___definitions_fluid_typed(data__fluid, custom_formats, (name_prefix or 'data') + '.fluid')
        if 'target' in data_keys:
            data_keys.remove('target')
            data__target = data['target']
            validate___definitions_target_typed(data__target, custom_formats, (name_prefix or 'data') + '.target')
        if 'mixing' in data_keys:
            data_keys.remove('mixing')
            data__mixing = data['mixing']
            validate___definitions_mixing_typed(data__mixing, custom_formats, (name_prefix or 'data') + '.mixing')
        if 'bucket' in data_keys:
            data_keys.remove('bucket')
            data__bucket = data['bucket']
            validate___definitions_bucket_typed(data__bucket, custom_formats, (name_prefix or 'data') + '.bucket')
        if 'units' in data_keys:
            data_keys.remove('units')
            data__units = data['units']
            validate___definitions_units(data__units, custom_formats, (name_prefix or 'data') + '.units')
        if 'pail' in data_keys:
            data_keys.remove('pail')
            data__pail = data['pail']
            validate___definitions_pail_typed(data__pail, custom_formats, (name_prefix or 'data') + '.pail')
        if 'ways' in data_keys:
            data_keys.remove('ways')
            data__ways = data['ways']
            validate___definitions_ways_typed(data__ways, custom_formats, (name_prefix or 'data') + '.ways')
        if 'instrument' in data_keys:
            data_keys.remove('instrument')
            data__instrument = data['instrument']
            validate___definitions_instrument_typed(data__instrument, custom_formats, (name_prefix or 'data') + '.instrument')
        if 'water' in data_keys:
            data_keys.remove('water')
            data__water = data['water']
            validate___definitions_water_typed(data__water, custom_formats, (name_prefix or 'data') + '.water')
        if 'pour_here' in data_keys:
            data_keys.remove('pour_here')
            data__pourhere = data['pour_here']
            if not isinstance(data__pourhere, str):
                raise JsonSchemaValueException('type', value=data__pourhere, name='' + (name_prefix or 'data') + '.pour_here', definition={'type': 'string'}, rule='type')
            if isinstance(data__pourhere, str):
                data__pourhere_len = len(data__pourhere)
                if data__pourhere_len < 1:
                    raise JsonSchemaValueException('minLength', value=data__pourhere, name='' + (name_prefix or 'data') + '.pour_here', definition={'minLength': 1}, rule='minLength')
                if data__pourhere_len > 120:
                    raise JsonSchemaValueException('maxLength', value=data__pourhere, name='' + (name_prefix or 'data') + '.pour_here', definition={'maxLength': 120}, rule='maxLength')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_water_typed(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['kind']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['kind']}, rule='required')
        data_keys = set(data.keys())
        if 'name' in data_keys:
            data_keys.remove('name')
            data__name = data['name']
            if not isinstance(data__name, str):
                raise JsonSchemaValueException('type', value=data__name, name='' + (name_prefix or 'data') + '.name', definition={'type': 'string'}, rule='type')
            if isinstance(data__name, str):
                data__name_len = len(data__name)
                if data__name_len > 80:
                    raise JsonSchemaValueException('maxLength', value=data__name, name='' + (name_prefix or 'data') + '.name', definition={'maxLength': 80}, rule='maxLength')
        if 'kind' in data_keys:
            data_keys.remove('kind')
            data__kind = data['kind']
            if not isinstance(data__kind, str):
                raise JsonSchemaValueException('type', value=data__kind, name='' + (name_prefix or 'data') + '.kind', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__kind, str) and data__kind == 'demineralised' or (isinstance(data__kind, str) and data__kind == 'softened') or (isinstance(data__kind, str) and data__kind == 'mains')):
                raise JsonSchemaValueException('enum', value=data__kind, name='' + (name_prefix or 'data') + '.kind', definition={'enum': ['demineralised', 'softened', 'mains']}, rule='enum')
        if 'hardness' in data_keys:
            data_keys.remove('hardness')
            data__hardness = data['hardness']
            validate___definitions_typed(data__hardness, custom_formats, (name_prefix or 'data') + '.hardness')
        if 'chloride' in data_keys:
            data_keys.remove('chloride')
            data__chloride = data['chloride']
            validate___definitions_typed(data__chloride, custom_formats, (name_prefix or 'data') + '.chloride')
        if 'nitrate' in data_keys:
            data_keys.remove('nitrate')
            data__nitrate = data['nitrate']
            validate___definitions_typed(data__nitrate, custom_formats, (name_prefix or 'data') + '.nitrate')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_instrument_typed(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    try:
        data_is_dict = isinstance(data, dict)
        if data_is_dict:
            data_keys = set(data.keys())
            if 'shows' in data_keys:
                data_keys.remove('shows')
                data__shows = data['shows']
                if not (isinstance(data__shows, str) and data__shows == 'per_cent'):
                    raise JsonSchemaValueException('const', value=data__shows, name='' + (name_prefix or 'data') + '.shows', definition={'const': 'per_cent'}, rule='const')
    except (JsonSchemaValueException, JsonSchemaValuesException):
        pass
    else:
        data_is_dict = isinstance(data, dict)
        if data_is_dict:
            data__missing_keys = set(['factor_inside']) - data.keys()
            if data__missing_keys:
                raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['factor_inside']}, rule='required')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['shows']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['shows']}, rule='required')
        data_keys = set(data.keys())
        if 'shows' in data_keys:
            data_keys.remove('shows')
            data__shows = data['shows']
            if not isinstance(data__shows, str):
                raise JsonSchemaValueException('type', value=data__shows, name='' + (name_prefix or 'data') + '.shows', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__shows, str) and data__shows == 'brix' or (isinstance(data__shows, str) and data__shows == 'refractive_index') or (isinstance(data__shows, str) and data__shows == 'per_cent')):
                raise JsonSchemaValueException('enum', value=data__shows, name='' + (name_prefix or 'data') + '.shows', definition={'enum': ['brix', 'refractive_index', 'per_cent']}, rule='enum')
        if 'name' in data_keys:
            data_keys.remove('name')
            data__name = data['name']
            if not isinstance(data__name, str):
                raise JsonSchemaValueException('type', value=data__name, name='' + (name_prefix or 'data') + '.name', definition={'type': 'string'}, rule='type')
            if isinstance(data__name, str):
                data__name_len = len(data__name)
                if data__name_len > 80:
                    raise JsonSchemaValueException('maxLength', value=data__name, name='' + (name_prefix or 'data') + '.name', definition={'maxLength': 80}, rule='maxLength')
        if 'kind' in data_keys:
            data_keys.remove('kind')
            data__kind = data['kind']
            if not isinstance(data__kind, str):
                raise JsonSchemaValueException('type', value=data__kind, name='' + (name_prefix or 'data') + '.kind', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__kind, str) and data__kind == 'optical' or (isinstance(data__kind, str) and data__kind == 'digital')):
                raise JsonSchemaValueException('enum', value=data__kind, name='' + (name_prefix or 'data') + '.kind', definition={'enum': ['optical', 'digital']}, rule='enum')
        if 'factor_inside' in data_keys:
            data_keys.remove('factor_inside')
            data__factorinside = data['factor_inside']
            validate___definitions_typed(data__factorinside, custom_formats, (name_prefix or 'data') + '.factor_inside')
        if 'compensation' in data_keys:
            data_keys.remove('compensation')
            data__compensation = data['compensation']
            if not isinstance(data__compensation, str):
                raise JsonSchemaValueException('type', value=data__compensation, name='' + (name_prefix or 'data') + '.compensation', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__compensation, str) and data__compensation == 'automatic' or (isinstance(data__compensation, str) and data__compensation == 'none')):
                raise JsonSchemaValueException('enum', value=data__compensation, name='' + (name_prefix or 'data') + '.compensation', definition={'enum': ['automatic', 'none']}, rule='enum')
        if 'resolution' in data_keys:
            data_keys.remove('resolution')
            data__resolution = data['resolution']
            validate___definitions_typed(data__resolution, custom_formats, (name_prefix or 'data') + '.resolution')
        if 'lowest' in data_keys:
            data_keys.remove('lowest')
            data__lowest = data['lowest']
            validate___definitions_typed(data__lowest, custom_formats, (name_prefix or 'data') + '.lowest')
        if 'highest' in data_keys:
            data_keys.remove('highest')
            data__highest = data['highest']
            validate___definitions_typed(data__highest, custom_formats, (name_prefix or 'data') + '.highest')
        if 'zero' in data_keys:
            data_keys.remove('zero')
            data__zero = data['zero']
            validate___definitions_zero_typed(data__zero, custom_formats, (name_prefix or 'data') + '.zero')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_zero_typed(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['shows']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['shows']}, rule='required')
        data_keys = set(data.keys())
        if 'shows' in data_keys:
            data_keys.remove('shows')
            data__shows = data['shows']
            validate___definitions_typed(data__shows, custom_formats, (name_prefix or 'data') + '.shows')
        if 'on' in data_keys:
            data_keys.remove('on')
            data__on = data['on']
            if not isinstance(data__on, str):
                raise JsonSchemaValueException('type', value=data__on, name='' + (name_prefix or 'data') + '.on', definition={'type': 'string'}, rule='type')
            if isinstance(data__on, str):
                data__on_len = len(data__on)
                if data__on_len > 40:
                    raise JsonSchemaValueException('maxLength', value=data__on, name='' + (name_prefix or 'data') + '.on', definition={'maxLength': 40}, rule='maxLength')
        if 'temperature' in data_keys:
            data_keys.remove('temperature')
            data__temperature = data['temperature']
            validate___definitions_typed(data__temperature, custom_formats, (name_prefix or 'data') + '.temperature')
        if 'water' in data_keys:
            data_keys.remove('water')
            data__water = data['water']
            if not isinstance(data__water, str):
                raise JsonSchemaValueException('type', value=data__water, name='' + (name_prefix or 'data') + '.water', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__water, str) and data__water == 'demineralised' or (isinstance(data__water, str) and data__water == 'softened') or (isinstance(data__water, str) and data__water == 'mains')):
                raise JsonSchemaValueException('enum', value=data__water, name='' + (name_prefix or 'data') + '.water', definition={'enum': ['demineralised', 'softened', 'mains']}, rule='enum')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_ways_typed(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set([]) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': []}, rule='required')
        data_keys = set(data.keys())
        if 'draw_off' in data_keys:
            data_keys.remove('draw_off')
            data__drawoff = data['draw_off']
            if not isinstance(data__drawoff, bool):
                raise JsonSchemaValueException('type', value=data__drawoff, name='' + (name_prefix or 'data') + '.draw_off', definition={'type': 'boolean'}, rule='type')
        if 'own_fluid' in data_keys:
            data_keys.remove('own_fluid')
            data__ownfluid = data['own_fluid']
            if not isinstance(data__ownfluid, bool):
                raise JsonSchemaValueException('type', value=data__ownfluid, name='' + (name_prefix or 'data') + '.own_fluid', definition={'type': 'boolean'}, rule='type')
        if 'carry_out' in data_keys:
            data_keys.remove('carry_out')
            data__carryout = data['carry_out']
            validate___definitions_typed(data__carryout, custom_formats, (name_prefix or 'data') + '.carry_out')
        if 'most_buckets' in data_keys:
            data_keys.remove('most_buckets')
            data__mostbuckets = data['most_buckets']
            validate___definitions_typed(data__mostbuckets, custom_formats, (name_prefix or 'data') + '.most_buckets')
        if 'heaviest' in data_keys:
            data_keys.remove('heaviest')
            data__heaviest = data['heaviest']
            validate___definitions_typed(data__heaviest, custom_formats, (name_prefix or 'data') + '.heaviest')
        if 'unit' in data_keys:
            data_keys.remove('unit')
            data__unit = data['unit']
            validate___definitions_unit_typed(data__unit, custom_formats, (name_prefix or 'data') + '.unit')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_unit_typed(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['lowest', 'highest', 'step']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['lowest', 'highest', 'step']}, rule='required')
        data_keys = set(data.keys())
        if 'lowest' in data_keys:
            data_keys.remove('lowest')
            data__lowest = data['lowest']
            validate___definitions_typed(data__lowest, custom_formats, (name_prefix or 'data') + '.lowest')
        if 'highest' in data_keys:
            data_keys.remove('highest')
            data__highest = data['highest']
            validate___definitions_typed(data__highest, custom_formats, (name_prefix or 'data') + '.highest')
        if 'step' in data_keys:
            data_keys.remove('step')
            data__step = data['step']
            validate___definitions_typed(data__step, custom_formats, (name_prefix or 'data') + '.step')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_pail_typed(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set([]) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': []}, rule='required')
        data_keys = set(data.keys())
        if 'first_mark' in data_keys:
            data_keys.remove('first_mark')
            data__firstmark = data['first_mark']
            validate___definitions_typed(data__firstmark, custom_formats, (name_prefix or 'data') + '.first_mark')
        if 'jug_first_mark' in data_keys:
            data_keys.remove('jug_first_mark')
            data__jugfirstmark = data['jug_first_mark']
            validate___definitions_typed(data__jugfirstmark, custom_formats, (name_prefix or 'data') + '.jug_first_mark')
        if 'jug_size' in data_keys:
            data_keys.remove('jug_size')
            data__jugsize = data['jug_size']
            validate___definitions_typed(data__jugsize, custom_formats, (name_prefix or 'data') + '.jug_size')
        if 'measure_by' in data_keys:
            data_keys.remove('measure_by')
            data__measureby = data['measure_by']
            if not isinstance(data__measureby, str):
                raise JsonSchemaValueException('type', value=data__measureby, name='' + (name_prefix or 'data') + '.measure_by', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__measureby, str) and data__measureby == 'jug' or (isinstance(data__measureby, str) and data__measureby == 'pail')):
                raise JsonSchemaValueException('enum', value=data__measureby, name='' + (name_prefix or 'data') + '.measure_by', definition={'enum': ['jug', 'pail']}, rule='enum')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_units(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['plate', 'stick', 'pail', 'jug']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['plate', 'stick', 'pail', 'jug']}, rule='required')
        data_keys = set(data.keys())
        if 'plate' in data_keys:
            data_keys.remove('plate')
            data__plate = data['plate']
            validate___definitions_volume_unit(data__plate, custom_formats, (name_prefix or 'data') + '.plate')
        if 'stick' in data_keys:
            data_keys.remove('stick')
            data__stick = data['stick']
            validate___definitions_length_unit(data__stick, custom_formats, (name_prefix or 'data') + '.stick')
        if 'pail' in data_keys:
            data_keys.remove('pail')
            data__pail = data['pail']
            validate___definitions_volume_unit(data__pail, custom_formats, (name_prefix or 'data') + '.pail')
        if 'jug' in data_keys:
            data_keys.remove('jug')
            data__jug = data['jug']
            validate___definitions_volume_unit(data__jug, custom_formats, (name_prefix or 'data') + '.jug')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_length_unit(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, str):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'string'}, rule='type')
    if not (isinstance(data, str) and data == 'mm' or (isinstance(data, str) and data == 'cm') or (isinstance(data, str) and data == 'm') or (isinstance(data, str) and data == 'in') or (isinstance(data, str) and data == 'ft')):
        raise JsonSchemaValueException('enum', value=data, name='' + (name_prefix or 'data') + '', definition={'enum': ['mm', 'cm', 'm', 'in', 'ft']}, rule='enum')
    return data

def validate___definitions_volume_unit(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, str):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'string'}, rule='type')
    if not (isinstance(data, str) and data == 'L' or (isinstance(data, str) and data == 'mL') or (isinstance(data, str) and data == 'US gal') or (isinstance(data, str) and data == 'US qt') or (isinstance(data, str) and data == 'US pt') or (isinstance(data, str) and data == 'US fl oz') or (isinstance(data, str) and data == 'imp gal') or (isinstance(data, str) and data == 'imp qt') or (isinstance(data, str) and data == 'imp pt') or (isinstance(data, str) and data == 'imp fl oz')):
        raise JsonSchemaValueException('enum', value=data, name='' + (name_prefix or 'data') + '', definition={'enum': ['L', 'mL', 'US gal', 'US qt', 'US pt', 'US fl oz', 'imp gal', 'imp qt', 'imp pt', 'imp fl oz']}, rule='enum')
    return data

def validate___definitions_bucket_typed(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['usable', 'water_mark', 'jug_mark']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['usable', 'water_mark', 'jug_mark']}, rule='required')
        data_keys = set(data.keys())
        if 'usable' in data_keys:
            data_keys.remove('usable')
            data__usable = data['usable']
            validate___definitions_typed(data__usable, custom_formats, (name_prefix or 'data') + '.usable')
        if 'water_mark' in data_keys:
            data_keys.remove('water_mark')
            data__watermark = data['water_mark']
            validate___definitions_typed(data__watermark, custom_formats, (name_prefix or 'data') + '.water_mark')
        if 'jug_mark' in data_keys:
            data_keys.remove('jug_mark')
            data__jugmark = data['jug_mark']
            validate___definitions_typed(data__jugmark, custom_formats, (name_prefix or 'data') + '.jug_mark')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_mixing_typed(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['strong', 'weak', 'closeness']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['strong', 'weak', 'closeness']}, rule='required')
        data_keys = set(data.keys())
        if 'strong' in data_keys:
            data_keys.remove('strong')
            data__strong = data['strong']
            validate___definitions_typed(data__strong, custom_formats, (name_prefix or 'data') + '.strong')
        if 'weak' in data_keys:
            data_keys.remove('weak')
            data__weak = data['weak']
            validate___definitions_typed(data__weak, custom_formats, (name_prefix or 'data') + '.weak')
        if 'closeness' in data_keys:
            data_keys.remove('closeness')
            data__closeness = data['closeness']
            validate___definitions_typed(data__closeness, custom_formats, (name_prefix or 'data') + '.closeness')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_target_typed(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['low', 'aim', 'high']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['low', 'aim', 'high']}, rule='required')
        data_keys = set(data.keys())
        if 'low' in data_keys:
            data_keys.remove('low')
            data__low = data['low']
            validate___definitions_typed(data__low, custom_formats, (name_prefix or 'data') + '.low')
        if 'aim' in data_keys:
            data_keys.remove('aim')
            data__aim = data['aim']
            validate___definitions_typed(data__aim, custom_formats, (name_prefix or 'data') + '.aim')
        if 'high' in data_keys:
            data_keys.remove('high')
            data__high = data['high']
            validate___definitions_typed(data__high, custom_formats, (name_prefix or 'data') + '.high')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_fluid_typed(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['type']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['type']}, rule='required')
        data_keys = set(data.keys())
        if 'type' in data_keys:
            data_keys.remove('type')
            data__type = data['type']
            if not isinstance(data__type, str):
                raise JsonSchemaValueException('type', value=data__type, name='' + (name_prefix or 'data') + '.type', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__type, str) and data__type == 'soluble_oil' or (isinstance(data__type, str) and data__type == 'semi_synthetic') or (isinstance(data__type, str) and data__type == 'synthetic') or (isinstance(data__type, str) and data__type == 'neat_oil')):
                raise JsonSchemaValueException('enum', value=data__type, name='' + (name_prefix or 'data') + '.type', definition={'enum': ['soluble_oil', 'semi_synthetic', 'synthetic', 'neat_oil']}, rule='enum')
        if 'name' in data_keys:
            data_keys.remove('name')
            data__name = data['name']
            if not isinstance(data__name, str):
                raise JsonSchemaValueException('type', value=data__name, name='' + (name_prefix or 'data') + '.name', definition={'type': 'string'}, rule='type')
            if isinstance(data__name, str):
                data__name_len = len(data__name)
                if data__name_len > 80:
                    raise JsonSchemaValueException('maxLength', value=data__name, name='' + (name_prefix or 'data') + '.name', definition={'maxLength': 80}, rule='maxLength')
        if 'factor' in data_keys:
            data_keys.remove('factor')
            data__factor = data['factor']
            validate___definitions_typed(data__factor, custom_formats, (name_prefix or 'data') + '.factor')
        if 'factor_known_by' in data_keys:
            data_keys.remove('factor_known_by')
            data__factorknownby = data['factor_known_by']
            if not isinstance(data__factorknownby, str):
                raise JsonSchemaValueException('type', value=data__factorknownby, name='' + (name_prefix or 'data') + '.factor_known_by', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__factorknownby, str) and data__factorknownby == 'sheet' or (isinstance(data__factorknownby, str) and data__factorknownby == 'own_jugs') or (isinstance(data__factorknownby, str) and data__factorknownby == 'old_fluid')):
                raise JsonSchemaValueException('enum', value=data__factorknownby, name='' + (name_prefix or 'data') + '.factor_known_by', definition={'enum': ['sheet', 'own_jugs', 'old_fluid']}, rule='enum')
        if 'zero' in data_keys:
            data_keys.remove('zero')
            data__zero = data['zero']
            validate___definitions_typed(data__zero, custom_formats, (name_prefix or 'data') + '.zero')
        if 'factor_direction' in data_keys:
            data_keys.remove('factor_direction')
            data__factordirection = data['factor_direction']
            if not isinstance(data__factordirection, str):
                raise JsonSchemaValueException('type', value=data__factordirection, name='' + (name_prefix or 'data') + '.factor_direction', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__factordirection, str) and data__factordirection == 'multiply' or (isinstance(data__factordirection, str) and data__factordirection == 'divide')):
                raise JsonSchemaValueException('enum', value=data__factordirection, name='' + (name_prefix or 'data') + '.factor_direction', definition={'enum': ['multiply', 'divide']}, rule='enum')
        if 'factor_u' in data_keys:
            data_keys.remove('factor_u')
            data__factoru = data['factor_u']
            validate___definitions_typed(data__factoru, custom_formats, (name_prefix or 'data') + '.factor_u')
        if 'factor_offset' in data_keys:
            data_keys.remove('factor_offset')
            data__factoroffset = data['factor_offset']
            validate___definitions_typed(data__factoroffset, custom_formats, (name_prefix or 'data') + '.factor_offset')
        if 'factor_chart' in data_keys:
            data_keys.remove('factor_chart')
            data__factorchart = data['factor_chart']
            if not isinstance(data__factorchart, (list, tuple)):
                raise JsonSchemaValueException('type', value=data__factorchart, name='' + (name_prefix or 'data') + '.factor_chart', definition={'type': 'array'}, rule='type')
            data__factorchart_is_list = isinstance(data__factorchart, (list, tuple))
            if data__factorchart_is_list:
                data__factorchart_len = len(data__factorchart)
                if data__factorchart_len < 1:
                    raise JsonSchemaValueException('minItems', value=data__factorchart, name='' + (name_prefix or 'data') + '.factor_chart', definition={'minItems': 1}, rule='minItems')
                if data__factorchart_len > 20:
                    raise JsonSchemaValueException('maxItems', value=data__factorchart, name='' + (name_prefix or 'data') + '.factor_chart', definition={'maxItems': 20}, rule='maxItems')
                for data__factorchart_x, data__factorchart_item in enumerate(data__factorchart):
                    if not isinstance(data__factorchart_item, dict):
                        raise JsonSchemaValueException('type', value=data__factorchart_item, name='' + (name_prefix or 'data') + '.factor_chart[{data__factorchart_x}]'.format(**locals()) + '', definition={'type': 'object'}, rule='type')
                    data__factorchart_item_is_dict = isinstance(data__factorchart_item, dict)
                    if data__factorchart_item_is_dict:
                        data__factorchart_item__missing_keys = set(['strength', 'reading']) - data__factorchart_item.keys()
                        if data__factorchart_item__missing_keys:
                            raise JsonSchemaValueException('required', value=data__factorchart_item, name='' + (name_prefix or 'data') + '.factor_chart[{data__factorchart_x}]'.format(**locals()) + '', definition={'required': ['strength', 'reading']}, rule='required')
                        data__factorchart_item_keys = set(data__factorchart_item.keys())
                        if 'strength' in data__factorchart_item_keys:
                            data__factorchart_item_keys.remove('strength')
                            data__factorchart_item__strength = data__factorchart_item['strength']
                            validate___definitions_typed(data__factorchart_item__strength, custom_formats, (name_prefix or 'data') + '.factor_chart[{data__factorchart_x}].strength'.format(**locals()))
                        if 'reading' in data__factorchart_item_keys:
                            data__factorchart_item_keys.remove('reading')
                            data__factorchart_item__reading = data__factorchart_item['reading']
                            validate___definitions_typed(data__factorchart_item__reading, custom_formats, (name_prefix or 'data') + '.factor_chart[{data__factorchart_x}].reading'.format(**locals()))
                        if data__factorchart_item_keys:
                            raise JsonSchemaValueException('' + (name_prefix or 'data') + '.factor_chart[{data__factorchart_x}]'.format(**locals()) + ' must not contain ' + str(data__factorchart_item_keys) + ' properties', value=data__factorchart_item, name='' + (name_prefix or 'data') + '.factor_chart[{data__factorchart_x}]'.format(**locals()) + '', definition={'additionalProperties': False}, rule='additionalProperties')
        if 'factor_on' in data_keys:
            data_keys.remove('factor_on')
            data__factoron = data['factor_on']
            if not isinstance(data__factoron, str):
                raise JsonSchemaValueException('type', value=data__factoron, name='' + (name_prefix or 'data') + '.factor_on', definition={'type': 'string'}, rule='type')
            if isinstance(data__factoron, str):
                data__factoron_len = len(data__factoron)
                if data__factoron_len > 40:
                    raise JsonSchemaValueException('maxLength', value=data__factoron, name='' + (name_prefix or 'data') + '.factor_on', definition={'maxLength': 40}, rule='maxLength')
        if 'titration_factor' in data_keys:
            data_keys.remove('titration_factor')
            data__titrationfactor = data['titration_factor']
            validate___definitions_typed(data__titrationfactor, custom_formats, (name_prefix or 'data') + '.titration_factor')
        if 'split_factor' in data_keys:
            data_keys.remove('split_factor')
            data__splitfactor = data['split_factor']
            validate___definitions_typed(data__splitfactor, custom_formats, (name_prefix or 'data') + '.split_factor')
        if 'metals' in data_keys:
            data_keys.remove('metals')
            data__metals = data['metals']
            if not isinstance(data__metals, (list, tuple)):
                raise JsonSchemaValueException('type', value=data__metals, name='' + (name_prefix or 'data') + '.metals', definition={'type': 'array'}, rule='type')
            data__metals_is_list = isinstance(data__metals, (list, tuple))
            if data__metals_is_list:
                data__metals_len = len(data__metals)
                if data__metals_len > 10:
                    raise JsonSchemaValueException('maxItems', value=data__metals, name='' + (name_prefix or 'data') + '.metals', definition={'maxItems': 10}, rule='maxItems')
                for data__metals_x, data__metals_item in enumerate(data__metals):
                    if not isinstance(data__metals_item, str):
                        raise JsonSchemaValueException('type', value=data__metals_item, name='' + (name_prefix or 'data') + '.metals[{data__metals_x}]'.format(**locals()) + '', definition={'type': 'string'}, rule='type')
                    if not (isinstance(data__metals_item, str) and data__metals_item == 'steel' or (isinstance(data__metals_item, str) and data__metals_item == 'cast_iron') or (isinstance(data__metals_item, str) and data__metals_item == 'aluminium') or (isinstance(data__metals_item, str) and data__metals_item == 'copper') or (isinstance(data__metals_item, str) and data__metals_item == 'titanium') or (isinstance(data__metals_item, str) and data__metals_item == 'magnesium') or (isinstance(data__metals_item, str) and data__metals_item == 'other')):
                        raise JsonSchemaValueException('enum', value=data__metals_item, name='' + (name_prefix or 'data') + '.metals[{data__metals_x}]'.format(**locals()) + '', definition={'enum': ['steel', 'cast_iron', 'aluminium', 'copper', 'titanium', 'magnesium', 'other']}, rule='enum')
        if 'made_for_magnesium' in data_keys:
            data_keys.remove('made_for_magnesium')
            data__madeformagnesium = data['made_for_magnesium']
            if not isinstance(data__madeformagnesium, bool):
                raise JsonSchemaValueException('type', value=data__madeformagnesium, name='' + (name_prefix or 'data') + '.made_for_magnesium', definition={'type': 'boolean'}, rule='type')
        if 'batch' in data_keys:
            data_keys.remove('batch')
            data__batch = data['batch']
            if not isinstance(data__batch, str):
                raise JsonSchemaValueException('type', value=data__batch, name='' + (name_prefix or 'data') + '.batch', definition={'type': 'string'}, rule='type')
            if isinstance(data__batch, str):
                data__batch_len = len(data__batch)
                if data__batch_len > 80:
                    raise JsonSchemaValueException('maxLength', value=data__batch, name='' + (name_prefix or 'data') + '.batch', definition={'maxLength': 80}, rule='maxLength')
        if 'target' in data_keys:
            data_keys.remove('target')
            data__target = data['target']
            validate___definitions_target_typed(data__target, custom_formats, (name_prefix or 'data') + '.target')
        if 'strong' in data_keys:
            data_keys.remove('strong')
            data__strong = data['strong']
            validate___definitions_typed(data__strong, custom_formats, (name_prefix or 'data') + '.strong')
        if 'weak' in data_keys:
            data_keys.remove('weak')
            data__weak = data['weak']
            validate___definitions_typed(data__weak, custom_formats, (name_prefix or 'data') + '.weak')
        if 'first_fill_ph' in data_keys:
            data_keys.remove('first_fill_ph')
            data__firstfillph = data['first_fill_ph']
            validate___definitions_typed(data__firstfillph, custom_formats, (name_prefix or 'data') + '.first_fill_ph')
        if 'water_limits' in data_keys:
            data_keys.remove('water_limits')
            data__waterlimits = data['water_limits']
            validate___definitions_water_limits_typed(data__waterlimits, custom_formats, (name_prefix or 'data') + '.water_limits')
        if 'density' in data_keys:
            data_keys.remove('density')
            data__density = data['density']
            validate___definitions_typed(data__density, custom_formats, (name_prefix or 'data') + '.density')
        if 'delivered_on' in data_keys:
            data_keys.remove('delivered_on')
            data__deliveredon = data['delivered_on']
            if not isinstance(data__deliveredon, str):
                raise JsonSchemaValueException('type', value=data__deliveredon, name='' + (name_prefix or 'data') + '.delivered_on', definition={'type': 'string'}, rule='type')
            if isinstance(data__deliveredon, str):
                data__deliveredon_len = len(data__deliveredon)
                if data__deliveredon_len > 40:
                    raise JsonSchemaValueException('maxLength', value=data__deliveredon, name='' + (name_prefix or 'data') + '.delivered_on', definition={'maxLength': 40}, rule='maxLength')
        if 'opened_on' in data_keys:
            data_keys.remove('opened_on')
            data__openedon = data['opened_on']
            if not isinstance(data__openedon, str):
                raise JsonSchemaValueException('type', value=data__openedon, name='' + (name_prefix or 'data') + '.opened_on', definition={'type': 'string'}, rule='type')
            if isinstance(data__openedon, str):
                data__openedon_len = len(data__openedon)
                if data__openedon_len > 40:
                    raise JsonSchemaValueException('maxLength', value=data__openedon, name='' + (name_prefix or 'data') + '.opened_on', definition={'maxLength': 40}, rule='maxLength')
        if 'shelf_life_months' in data_keys:
            data_keys.remove('shelf_life_months')
            data__shelflifemonths = data['shelf_life_months']
            if not isinstance(data__shelflifemonths, int) and (not (isinstance(data__shelflifemonths, float) and data__shelflifemonths.is_integer())) or isinstance(data__shelflifemonths, bool):
                raise JsonSchemaValueException('type', value=data__shelflifemonths, name='' + (name_prefix or 'data') + '.shelf_life_months', definition={'type': 'integer'}, rule='type')
            if isinstance(data__shelflifemonths, (int, float, Decimal)) and (not isinstance(data__shelflifemonths, bool)):
                if data__shelflifemonths < 1:
                    raise JsonSchemaValueException('minimum', value=data__shelflifemonths, name='' + (name_prefix or 'data') + '.shelf_life_months', definition={'minimum': 1}, rule='minimum')
                if data__shelflifemonths > 120:
                    raise JsonSchemaValueException('maximum', value=data__shelflifemonths, name='' + (name_prefix or 'data') + '.shelf_life_months', definition={'maximum': 120}, rule='maximum')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_water_limits_typed(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['scheme', 'low', 'high']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['scheme', 'low', 'high']}, rule='required')
        data_keys = set(data.keys())
        if 'scheme' in data_keys:
            data_keys.remove('scheme')
            data__scheme = data['scheme']
            if not isinstance(data__scheme, str):
                raise JsonSchemaValueException('type', value=data__scheme, name='' + (name_prefix or 'data') + '.scheme', definition={'type': 'string'}, rule='type')
            if isinstance(data__scheme, str):
                data__scheme_len = len(data__scheme)
                if data__scheme_len < 1:
                    raise JsonSchemaValueException('minLength', value=data__scheme, name='' + (name_prefix or 'data') + '.scheme', definition={'minLength': 1}, rule='minLength')
                if data__scheme_len > 80:
                    raise JsonSchemaValueException('maxLength', value=data__scheme, name='' + (name_prefix or 'data') + '.scheme', definition={'maxLength': 80}, rule='maxLength')
        if 'low' in data_keys:
            data_keys.remove('low')
            data__low = data['low']
            validate___definitions_typed(data__low, custom_formats, (name_prefix or 'data') + '.low')
        if 'high' in data_keys:
            data_keys.remove('high')
            data__high = data['high']
            validate___definitions_typed(data__high, custom_formats, (name_prefix or 'data') + '.high')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_sump_typed(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    try:
        data_is_dict = isinstance(data, dict)
        if data_is_dict:
            data_keys = set(data.keys())
            if 'kind' in data_keys:
                data_keys.remove('kind')
                data__kind = data['kind']
                if not (isinstance(data__kind, str) and data__kind == 'proportional'):
                    raise JsonSchemaValueException('const', value=data__kind, name='' + (name_prefix or 'data') + '.kind', definition={'const': 'proportional'}, rule='const')
    except (JsonSchemaValueException, JsonSchemaValuesException):
        pass
    else:
        data_is_dict = isinstance(data, dict)
        if data_is_dict:
            data__missing_keys = set(['full_volume']) - data.keys()
            if data__missing_keys:
                raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['full_volume']}, rule='required')
    try:
        data_is_dict = isinstance(data, dict)
        if data_is_dict:
            data_keys = set(data.keys())
            if 'kind' in data_keys:
                data_keys.remove('kind')
                data__kind = data['kind']
                if not (isinstance(data__kind, str) and data__kind == 'box'):
                    raise JsonSchemaValueException('const', value=data__kind, name='' + (name_prefix or 'data') + '.kind', definition={'const': 'box'}, rule='const')
    except (JsonSchemaValueException, JsonSchemaValuesException):
        pass
    else:
        data_is_dict = isinstance(data, dict)
        if data_is_dict:
            data__missing_keys = set(['length', 'width']) - data.keys()
            if data__missing_keys:
                raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['length', 'width']}, rule='required')
    try:
        data_is_dict = isinstance(data, dict)
        if data_is_dict:
            data_keys = set(data.keys())
            if 'kind' in data_keys:
                data_keys.remove('kind')
                data__kind = data['kind']
                if not (isinstance(data__kind, str) and data__kind == 'sloped_box'):
                    raise JsonSchemaValueException('const', value=data__kind, name='' + (name_prefix or 'data') + '.kind', definition={'const': 'sloped_box'}, rule='const')
    except (JsonSchemaValueException, JsonSchemaValuesException):
        pass
    else:
        data_is_dict = isinstance(data, dict)
        if data_is_dict:
            data__missing_keys = set(['length', 'width', 'rise', 'dipped_end']) - data.keys()
            if data__missing_keys:
                raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['length', 'width', 'rise', 'dipped_end']}, rule='required')
    try:
        data_is_dict = isinstance(data, dict)
        if data_is_dict:
            data_keys = set(data.keys())
            if 'kind' in data_keys:
                data_keys.remove('kind')
                data__kind = data['kind']
                if not (isinstance(data__kind, str) and data__kind == 'stepped'):
                    raise JsonSchemaValueException('const', value=data__kind, name='' + (name_prefix or 'data') + '.kind', definition={'const': 'stepped'}, rule='const')
    except (JsonSchemaValueException, JsonSchemaValuesException):
        pass
    else:
        data_is_dict = isinstance(data, dict)
        if data_is_dict:
            data__missing_keys = set(['steps']) - data.keys()
            if data__missing_keys:
                raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['steps']}, rule='required')
    try:
        data_is_dict = isinstance(data, dict)
        if data_is_dict:
            data_keys = set(data.keys())
            if 'kind' in data_keys:
                data_keys.remove('kind')
                data__kind = data['kind']
                if not (isinstance(data__kind, str) and data__kind == 'upright_cylinder'):
                    raise JsonSchemaValueException('const', value=data__kind, name='' + (name_prefix or 'data') + '.kind', definition={'const': 'upright_cylinder'}, rule='const')
    except (JsonSchemaValueException, JsonSchemaValuesException):
        pass
    else:
        data_is_dict = isinstance(data, dict)
        if data_is_dict:
            data__missing_keys = set(['diameter']) - data.keys()
            if data__missing_keys:
                raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['diameter']}, rule='required')
    try:
        data_is_dict = isinstance(data, dict)
        if data_is_dict:
            data_keys = set(data.keys())
            if 'kind' in data_keys:
                data_keys.remove('kind')
                data__kind = data['kind']
                if not (isinstance(data__kind, str) and data__kind == 'horizontal_cylinder'):
                    raise JsonSchemaValueException('const', value=data__kind, name='' + (name_prefix or 'data') + '.kind', definition={'const': 'horizontal_cylinder'}, rule='const')
    except (JsonSchemaValueException, JsonSchemaValuesException):
        pass
    else:
        data_is_dict = isinstance(data, dict)
        if data_is_dict:
            data__missing_keys = set(['diameter', 'length']) - data.keys()
            if data__missing_keys:
                raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['diameter', 'length']}, rule='required')
    try:
        data_is_dict = isinstance(data, dict)
        if data_is_dict:
            data_keys = set(data.keys())
            if 'kind' in data_keys:
                data_keys.remove('kind')
                data__kind = data['kind']
                if not (isinstance(data__kind, str) and data__kind == 'frustum'):
                    raise JsonSchemaValueException('const', value=data__kind, name='' + (name_prefix or 'data') + '.kind', definition={'const': 'frustum'}, rule='const')
    except (JsonSchemaValueException, JsonSchemaValuesException):
        pass
    else:
        data_is_dict = isinstance(data, dict)
        if data_is_dict:
            data__missing_keys = set(['bottom_diameter', 'top_diameter', 'height']) - data.keys()
            if data__missing_keys:
                raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['bottom_diameter', 'top_diameter', 'height']}, rule='required')
    try:
        data_is_dict = isinstance(data, dict)
        if data_is_dict:
            data_keys = set(data.keys())
            if 'kind' in data_keys:
                data_keys.remove('kind')
                data__kind = data['kind']
                if not (isinstance(data__kind, str) and data__kind == 'table'):
                    raise JsonSchemaValueException('const', value=data__kind, name='' + (name_prefix or 'data') + '.kind', definition={'const': 'table'}, rule='const')
    except (JsonSchemaValueException, JsonSchemaValuesException):
        pass
    else:
        data_is_dict = isinstance(data, dict)
        if data_is_dict:
            data__missing_keys = set(['points']) - data.keys()
            if data__missing_keys:
                raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['points']}, rule='required')
    try:
        data_is_dict = isinstance(data, dict)
        if data_is_dict:
            data__missing_keys = set(['dip_from']) - data.keys()
            if data__missing_keys:
                raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['dip_from']}, rule='required')
            data_keys = set(data.keys())
            if 'dip_from' in data_keys:
                data_keys.remove('dip_from')
                data__dipfrom = data['dip_from']
                if not (isinstance(data__dipfrom, str) and data__dipfrom == 'top'):
                    raise JsonSchemaValueException('const', value=data__dipfrom, name='' + (name_prefix or 'data') + '.dip_from', definition={'const': 'top'}, rule='const')
    except (JsonSchemaValueException, JsonSchemaValuesException):
        pass
    else:
        data_is_dict = isinstance(data, dict)
        if data_is_dict:
            data__missing_keys = set(['reference_height']) - data.keys()
            if data__missing_keys:
                raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['reference_height']}, rule='required')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['kind', 'full_depth', 'volume_known_by']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['kind', 'full_depth', 'volume_known_by']}, rule='required')
        data_keys = set(data.keys())
        if 'kind' in data_keys:
            data_keys.remove('kind')
            data__kind = data['kind']
            if not isinstance(data__kind, str):
                raise JsonSchemaValueException('type', value=data__kind, name='' + (name_prefix or 'data') + '.kind', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__kind, str) and data__kind == 'proportional' or (isinstance(data__kind, str) and data__kind == 'box') or (isinstance(data__kind, str) and data__kind == 'sloped_box') or (isinstance(data__kind, str) and data__kind == 'stepped') or (isinstance(data__kind, str) and data__kind == 'upright_cylinder') or (isinstance(data__kind, str) and data__kind == 'horizontal_cylinder') or (isinstance(data__kind, str) and data__kind == 'frustum') or (isinstance(data__kind, str) and data__kind == 'table')):
                raise JsonSchemaValueException('enum', value=data__kind, name='' + (name_prefix or 'data') + '.kind', definition={'enum': ['proportional', 'box', 'sloped_box', 'stepped', 'upright_cylinder', 'horizontal_cylinder', 'frustum', 'table']}, rule='enum')
        if 'full_depth' in data_keys:
            data_keys.remove('full_depth')
            data__fulldepth = data['full_depth']
            validate___definitions_typed(data__fulldepth, custom_formats, (name_prefix or 'data') + '.full_depth')
        if 'volume_known_by' in data_keys:
            data_keys.remove('volume_known_by')
            data__volumeknownby = data['volume_known_by']
            if not isinstance(data__volumeknownby, str):
                raise JsonSchemaValueException('type', value=data__volumeknownby, name='' + (name_prefix or 'data') + '.volume_known_by', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__volumeknownby, str) and data__volumeknownby == 'plate' or (isinstance(data__volumeknownby, str) and data__volumeknownby == 'poured') or (isinstance(data__volumeknownby, str) and data__volumeknownby == 'said') or (isinstance(data__volumeknownby, str) and data__volumeknownby == 'measured')):
                raise JsonSchemaValueException('enum', value=data__volumeknownby, name='' + (name_prefix or 'data') + '.volume_known_by', definition={'enum': ['plate', 'poured', 'said', 'measured']}, rule='enum')
        if 'full_volume' in data_keys:
            data_keys.remove('full_volume')
            data__fullvolume = data['full_volume']
            validate___definitions_typed(data__fullvolume, custom_formats, (name_prefix or 'data') + '.full_volume')
        if 'length' in data_keys:
            data_keys.remove('length')
            data__length = data['length']
            validate___definitions_typed(data__length, custom_formats, (name_prefix or 'data') + '.length')
        if 'width' in data_keys:
            data_keys.remove('width')
            data__width = data['width']
            validate___definitions_typed(data__width, custom_formats, (name_prefix or 'data') + '.width')
        if 'points' in data_keys:
            data_keys.remove('points')
            data__points = data['points']
            if not isinstance(data__points, (list, tuple)):
                raise JsonSchemaValueException('type', value=data__points, name='' + (name_prefix or 'data') + '.points', definition={'type': 'array'}, rule='type')
            data__points_is_list = isinstance(data__points, (list, tuple))
            if data__points_is_list:
                data__points_len = len(data__points)
                if data__points_len < 2:
                    raise JsonSchemaValueException('minItems', value=data__points, name='' + (name_prefix or 'data') + '.points', definition={'minItems': 2}, rule='minItems')
                if data__points_len > 200:
                    raise JsonSchemaValueException('maxItems', value=data__points, name='' + (name_prefix or 'data') + '.points', definition={'maxItems': 200}, rule='maxItems')
                for data__points_x, data__points_item in enumerate(data__points):
                    if not isinstance(data__points_item, dict):
                        raise JsonSchemaValueException('type', value=data__points_item, name='' + (name_prefix or 'data') + '.points[{data__points_x}]'.format(**locals()) + '', definition={'type': 'object'}, rule='type')
                    data__points_item_is_dict = isinstance(data__points_item, dict)
                    if data__points_item_is_dict:
                        data__points_item__missing_keys = set(['depth', 'volume']) - data__points_item.keys()
                        if data__points_item__missing_keys:
                            raise JsonSchemaValueException('required', value=data__points_item, name='' + (name_prefix or 'data') + '.points[{data__points_x}]'.format(**locals()) + '', definition={'required': ['depth', 'volume']}, rule='required')
                        data__points_item_keys = set(data__points_item.keys())
                        if 'depth' in data__points_item_keys:
                            data__points_item_keys.remove('depth')
                            data__points_item__depth = data__points_item['depth']
                            validate___definitions_typed(data__points_item__depth, custom_formats, (name_prefix or 'data') + '.points[{data__points_x}].depth'.format(**locals()))
                        if 'volume' in data__points_item_keys:
                            data__points_item_keys.remove('volume')
                            data__points_item__volume = data__points_item['volume']
                            validate___definitions_typed(data__points_item__volume, custom_formats, (name_prefix or 'data') + '.points[{data__points_x}].volume'.format(**locals()))
                        if 'u' in data__points_item_keys:
                            data__points_item_keys.remove('u')
                            data__points_item__u = data__points_item['u']
                            validate___definitions_typed(data__points_item__u, custom_formats, (name_prefix or 'data') + '.points[{data__points_x}].u'.format(**locals()))
                        if data__points_item_keys:
                            raise JsonSchemaValueException('' + (name_prefix or 'data') + '.points[{data__points_x}]'.format(**locals()) + ' must not contain ' + str(data__points_item_keys) + ' properties', value=data__points_item, name='' + (name_prefix or 'data') + '.points[{data__points_x}]'.format(**locals()) + '', definition={'additionalProperties': False}, rule='additionalProperties')
        if 'rim_depth' in data_keys:
            data_keys.remove('rim_depth')
            data__rimdepth = data['rim_depth']
            validate___definitions_typed(data__rimdepth, custom_formats, (name_prefix or 'data') + '.rim_depth')
        if 'never_above_depth' in data_keys:
            data_keys.remove('never_above_depth')
            data__neverabovedepth = data['never_above_depth']
            validate___definitions_typed(data__neverabovedepth, custom_formats, (name_prefix or 'data') + '.never_above_depth')
        if 'rise' in data_keys:
            data_keys.remove('rise')
            data__rise = data['rise']
            validate___definitions_typed(data__rise, custom_formats, (name_prefix or 'data') + '.rise')
        if 'dipped_end' in data_keys:
            data_keys.remove('dipped_end')
            data__dippedend = data['dipped_end']
            if not isinstance(data__dippedend, str):
                raise JsonSchemaValueException('type', value=data__dippedend, name='' + (name_prefix or 'data') + '.dipped_end', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__dippedend, str) and data__dippedend == 'deep' or (isinstance(data__dippedend, str) and data__dippedend == 'shallow')):
                raise JsonSchemaValueException('enum', value=data__dippedend, name='' + (name_prefix or 'data') + '.dipped_end', definition={'enum': ['deep', 'shallow']}, rule='enum')
        if 'steps' in data_keys:
            data_keys.remove('steps')
            data__steps = data['steps']
            if not isinstance(data__steps, (list, tuple)):
                raise JsonSchemaValueException('type', value=data__steps, name='' + (name_prefix or 'data') + '.steps', definition={'type': 'array'}, rule='type')
            data__steps_is_list = isinstance(data__steps, (list, tuple))
            if data__steps_is_list:
                data__steps_len = len(data__steps)
                if data__steps_len < 2:
                    raise JsonSchemaValueException('minItems', value=data__steps, name='' + (name_prefix or 'data') + '.steps', definition={'minItems': 2}, rule='minItems')
                if data__steps_len > 20:
                    raise JsonSchemaValueException('maxItems', value=data__steps, name='' + (name_prefix or 'data') + '.steps', definition={'maxItems': 20}, rule='maxItems')
                for data__steps_x, data__steps_item in enumerate(data__steps):
                    if not isinstance(data__steps_item, dict):
                        raise JsonSchemaValueException('type', value=data__steps_item, name='' + (name_prefix or 'data') + '.steps[{data__steps_x}]'.format(**locals()) + '', definition={'type': 'object'}, rule='type')
                    data__steps_item_is_dict = isinstance(data__steps_item, dict)
                    if data__steps_item_is_dict:
                        data__steps_item__missing_keys = set(['floor', 'length', 'width']) - data__steps_item.keys()
                        if data__steps_item__missing_keys:
                            raise JsonSchemaValueException('required', value=data__steps_item, name='' + (name_prefix or 'data') + '.steps[{data__steps_x}]'.format(**locals()) + '', definition={'required': ['floor', 'length', 'width']}, rule='required')
                        data__steps_item_keys = set(data__steps_item.keys())
                        if 'floor' in data__steps_item_keys:
                            data__steps_item_keys.remove('floor')
                            data__steps_item__floor = data__steps_item['floor']
                            validate___definitions_typed(data__steps_item__floor, custom_formats, (name_prefix or 'data') + '.steps[{data__steps_x}].floor'.format(**locals()))
                        if 'length' in data__steps_item_keys:
                            data__steps_item_keys.remove('length')
                            data__steps_item__length = data__steps_item['length']
                            validate___definitions_typed(data__steps_item__length, custom_formats, (name_prefix or 'data') + '.steps[{data__steps_x}].length'.format(**locals()))
                        if 'width' in data__steps_item_keys:
                            data__steps_item_keys.remove('width')
                            data__steps_item__width = data__steps_item['width']
                            validate___definitions_typed(data__steps_item__width, custom_formats, (name_prefix or 'data') + '.steps[{data__steps_x}].width'.format(**locals()))
                        if data__steps_item_keys:
                            raise JsonSchemaValueException('' + (name_prefix or 'data') + '.steps[{data__steps_x}]'.format(**locals()) + ' must not contain ' + str(data__steps_item_keys) + ' properties', value=data__steps_item, name='' + (name_prefix or 'data') + '.steps[{data__steps_x}]'.format(**locals()) + '', definition={'additionalProperties': False}, rule='additionalProperties')
        if 'diameter' in data_keys:
            data_keys.remove('diameter')
            data__diameter = data['diameter']
            validate___definitions_typed(data__diameter, custom_formats, (name_prefix or 'data') + '.diameter')
        if 'bottom_diameter' in data_keys:
            data_keys.remove('bottom_diameter')
            data__bottomdiameter = data['bottom_diameter']
            validate___definitions_typed(data__bottomdiameter, custom_formats, (name_prefix or 'data') + '.bottom_diameter')
        if 'top_diameter' in data_keys:
            data_keys.remove('top_diameter')
            data__topdiameter = data['top_diameter']
            validate___definitions_typed(data__topdiameter, custom_formats, (name_prefix or 'data') + '.top_diameter')
        if 'height' in data_keys:
            data_keys.remove('height')
            data__height = data['height']
            validate___definitions_typed(data__height, custom_formats, (name_prefix or 'data') + '.height')
        if 'obstacles' in data_keys:
            data_keys.remove('obstacles')
            data__obstacles = data['obstacles']
            if not isinstance(data__obstacles, (list, tuple)):
                raise JsonSchemaValueException('type', value=data__obstacles, name='' + (name_prefix or 'data') + '.obstacles', definition={'type': 'array'}, rule='type')
            data__obstacles_is_list = isinstance(data__obstacles, (list, tuple))
            if data__obstacles_is_list:
                data__obstacles_len = len(data__obstacles)
                if data__obstacles_len > 20:
                    raise JsonSchemaValueException('maxItems', value=data__obstacles, name='' + (name_prefix or 'data') + '.obstacles', definition={'maxItems': 20}, rule='maxItems')
                for data__obstacles_x, data__obstacles_item in enumerate(data__obstacles):
                    validate___definitions_obstacle_typed(data__obstacles_item, custom_formats, (name_prefix or 'data') + '.obstacles[{data__obstacles_x}]'.format(**locals()))
        if 'hidden' in data_keys:
            data_keys.remove('hidden')
            data__hidden = data['hidden']
            if not isinstance(data__hidden, dict):
                raise JsonSchemaValueException('type', value=data__hidden, name='' + (name_prefix or 'data') + '.hidden', definition={'type': 'object'}, rule='type')
            data__hidden_is_dict = isinstance(data__hidden, dict)
            if data__hidden_is_dict:
                data__hidden__missing_keys = set(['volume', 'drains_back']) - data__hidden.keys()
                if data__hidden__missing_keys:
                    raise JsonSchemaValueException('required', value=data__hidden, name='' + (name_prefix or 'data') + '.hidden', definition={'required': ['volume', 'drains_back']}, rule='required')
                data__hidden_keys = set(data__hidden.keys())
                if 'volume' in data__hidden_keys:
                    data__hidden_keys.remove('volume')
                    data__hidden__volume = data__hidden['volume']
                    validate___definitions_typed(data__hidden__volume, custom_formats, (name_prefix or 'data') + '.hidden.volume')
                if 'u' in data__hidden_keys:
                    data__hidden_keys.remove('u')
                    data__hidden__u = data__hidden['u']
                    validate___definitions_typed(data__hidden__u, custom_formats, (name_prefix or 'data') + '.hidden.u')
                if 'drains_back' in data__hidden_keys:
                    data__hidden_keys.remove('drains_back')
                    data__hidden__drainsback = data__hidden['drains_back']
                    if not isinstance(data__hidden__drainsback, bool):
                        raise JsonSchemaValueException('type', value=data__hidden__drainsback, name='' + (name_prefix or 'data') + '.hidden.drains_back', definition={'type': 'boolean'}, rule='type')
                if data__hidden_keys:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.hidden must not contain ' + str(data__hidden_keys) + ' properties', value=data__hidden, name='' + (name_prefix or 'data') + '.hidden', definition={'additionalProperties': False}, rule='additionalProperties')
        if 'rest' in data_keys:
            data_keys.remove('rest')
            data__rest = data['rest']
            validate___definitions_typed(data__rest, custom_formats, (name_prefix or 'data') + '.rest')
        if 'dip_from' in data_keys:
            data_keys.remove('dip_from')
            data__dipfrom = data['dip_from']
            if not isinstance(data__dipfrom, str):
                raise JsonSchemaValueException('type', value=data__dipfrom, name='' + (name_prefix or 'data') + '.dip_from', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__dipfrom, str) and data__dipfrom == 'bottom' or (isinstance(data__dipfrom, str) and data__dipfrom == 'top')):
                raise JsonSchemaValueException('enum', value=data__dipfrom, name='' + (name_prefix or 'data') + '.dip_from', definition={'enum': ['bottom', 'top']}, rule='enum')
        if 'reference_height' in data_keys:
            data_keys.remove('reference_height')
            data__referenceheight = data['reference_height']
            validate___definitions_typed(data__referenceheight, custom_formats, (name_prefix or 'data') + '.reference_height')
        if 'zero_offset' in data_keys:
            data_keys.remove('zero_offset')
            data__zerooffset = data['zero_offset']
            validate___definitions_typed(data__zerooffset, custom_formats, (name_prefix or 'data') + '.zero_offset')
        if 'read_as' in data_keys:
            data_keys.remove('read_as')
            data__readas = data['read_as']
            if not isinstance(data__readas, str):
                raise JsonSchemaValueException('type', value=data__readas, name='' + (name_prefix or 'data') + '.read_as', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__readas, str) and data__readas == 'depth' or (isinstance(data__readas, str) and data__readas == 'volume') or (isinstance(data__readas, str) and data__readas == 'gauge')):
                raise JsonSchemaValueException('enum', value=data__readas, name='' + (name_prefix or 'data') + '.read_as', definition={'enum': ['depth', 'volume', 'gauge']}, rule='enum')
        if 'level_true' in data_keys:
            data_keys.remove('level_true')
            data__leveltrue = data['level_true']
            if not isinstance(data__leveltrue, str):
                raise JsonSchemaValueException('type', value=data__leveltrue, name='' + (name_prefix or 'data') + '.level_true', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__leveltrue, str) and data__leveltrue == 'stopped' or (isinstance(data__leveltrue, str) and data__leveltrue == 'running')):
                raise JsonSchemaValueException('enum', value=data__leveltrue, name='' + (name_prefix or 'data') + '.level_true', definition={'enum': ['stopped', 'running']}, rule='enum')
        if 'wait_min' in data_keys:
            data_keys.remove('wait_min')
            data__waitmin = data['wait_min']
            if not isinstance(data__waitmin, int) and (not (isinstance(data__waitmin, float) and data__waitmin.is_integer())) or isinstance(data__waitmin, bool):
                raise JsonSchemaValueException('type', value=data__waitmin, name='' + (name_prefix or 'data') + '.wait_min', definition={'type': 'integer'}, rule='type')
            if isinstance(data__waitmin, (int, float, Decimal)) and (not isinstance(data__waitmin, bool)):
                if data__waitmin < 0:
                    raise JsonSchemaValueException('minimum', value=data__waitmin, name='' + (name_prefix or 'data') + '.wait_min', definition={'minimum': 0}, rule='minimum')
                if data__waitmin > 240:
                    raise JsonSchemaValueException('maximum', value=data__waitmin, name='' + (name_prefix or 'data') + '.wait_min', definition={'maximum': 240}, rule='maximum')
        if 'mix_min' in data_keys:
            data_keys.remove('mix_min')
            data__mixmin = data['mix_min']
            if not isinstance(data__mixmin, int) and (not (isinstance(data__mixmin, float) and data__mixmin.is_integer())) or isinstance(data__mixmin, bool):
                raise JsonSchemaValueException('type', value=data__mixmin, name='' + (name_prefix or 'data') + '.mix_min', definition={'type': 'integer'}, rule='type')
            if isinstance(data__mixmin, (int, float, Decimal)) and (not isinstance(data__mixmin, bool)):
                if data__mixmin < 1:
                    raise JsonSchemaValueException('minimum', value=data__mixmin, name='' + (name_prefix or 'data') + '.mix_min', definition={'minimum': 1}, rule='minimum')
                if data__mixmin > 1440:
                    raise JsonSchemaValueException('maximum', value=data__mixmin, name='' + (name_prefix or 'data') + '.mix_min', definition={'maximum': 1440}, rule='maximum')
        if 'divided' in data_keys:
            data_keys.remove('divided')
            data__divided = data['divided']
            if not isinstance(data__divided, bool):
                raise JsonSchemaValueException('type', value=data__divided, name='' + (name_prefix or 'data') + '.divided', definition={'type': 'boolean'}, rule='type')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_obstacle_typed(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['from_depth']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['from_depth']}, rule='required')
        data_keys = set(data.keys())
        if 'from_depth' in data_keys:
            data_keys.remove('from_depth')
            data__fromdepth = data['from_depth']
            validate___definitions_typed(data__fromdepth, custom_formats, (name_prefix or 'data') + '.from_depth')
        if 'to_depth' in data_keys:
            data_keys.remove('to_depth')
            data__todepth = data['to_depth']
            validate___definitions_typed(data__todepth, custom_formats, (name_prefix or 'data') + '.to_depth')
        if 'length' in data_keys:
            data_keys.remove('length')
            data__length = data['length']
            validate___definitions_typed(data__length, custom_formats, (name_prefix or 'data') + '.length')
        if 'width' in data_keys:
            data_keys.remove('width')
            data__width = data['width']
            validate___definitions_typed(data__width, custom_formats, (name_prefix or 'data') + '.width')
        if 'diameter' in data_keys:
            data_keys.remove('diameter')
            data__diameter = data['diameter']
            validate___definitions_typed(data__diameter, custom_formats, (name_prefix or 'data') + '.diameter')
        if 'volume' in data_keys:
            data_keys.remove('volume')
            data__volume = data['volume']
            validate___definitions_typed(data__volume, custom_formats, (name_prefix or 'data') + '.volume')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_log_entry(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['id', 'log', 'seq', 'prev', 'schema', 'kind', 'measured_at', 'wall', 'clock_flags', 'body', 'versions']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['id', 'log', 'seq', 'prev', 'schema', 'kind', 'measured_at', 'wall', 'clock_flags', 'body', 'versions']}, rule='required')
        data_keys = set(data.keys())
        if 'id' in data_keys:
            data_keys.remove('id')
            data__id = data['id']
            validate___definitions_entry_id(data__id, custom_formats, (name_prefix or 'data') + '.id')
        if 'log' in data_keys:
            data_keys.remove('log')
            data__log = data['log']
            validate___definitions_entry_id(data__log, custom_formats, (name_prefix or 'data') + '.log')
        if 'seq' in data_keys:
            data_keys.remove('seq')
            data__seq = data['seq']
            if not isinstance(data__seq, int) and (not (isinstance(data__seq, float) and data__seq.is_integer())) or isinstance(data__seq, bool):
                raise JsonSchemaValueException('type', value=data__seq, name='' + (name_prefix or 'data') + '.seq', definition={'type': 'integer'}, rule='type')
            if isinstance(data__seq, (int, float, Decimal)) and (not isinstance(data__seq, bool)):
                if data__seq < 1:
                    raise JsonSchemaValueException('minimum', value=data__seq, name='' + (name_prefix or 'data') + '.seq', definition={'minimum': 1}, rule='minimum')
                if data__seq > 1000000000:
                    raise JsonSchemaValueException('maximum', value=data__seq, name='' + (name_prefix or 'data') + '.seq', definition={'maximum': 1000000000}, rule='maximum')
        if 'prev' in data_keys:
            data_keys.remove('prev')
            data__prev = data['prev']
            if not isinstance(data__prev, str):
                raise JsonSchemaValueException('type', value=data__prev, name='' + (name_prefix or 'data') + '.prev', definition={'type': 'string'}, rule='type')
            if isinstance(data__prev, str):
                if not REGEX_PATTERNS['^([0-9a-f]{64})?$'].search(data__prev):
                    raise JsonSchemaValueException('pattern', value=data__prev, name='' + (name_prefix or 'data') + '.prev', definition={'pattern': '^([0-9a-f]{64})?$'}, rule='pattern')
        if 'schema' in data_keys:
            data_keys.remove('schema')
            data__schema = data['schema']
            if not isinstance(data__schema, int) and (not (isinstance(data__schema, float) and data__schema.is_integer())) or isinstance(data__schema, bool):
                raise JsonSchemaValueException('type', value=data__schema, name='' + (name_prefix or 'data') + '.schema', definition={'type': 'integer'}, rule='type')
            if not (isinstance(data__schema, (int, float)) and (not isinstance(data__schema, bool)) and (data__schema == 2)):
                raise JsonSchemaValueException('const', value=data__schema, name='' + (name_prefix or 'data') + '.schema', definition={'const': 2}, rule='const')
        if 'kind' in data_keys:
            data_keys.remove('kind')
            data__kind = data['kind']
            validate___definitions_entry_kind(data__kind, custom_formats, (name_prefix or 'data') + '.kind')
        if 'machine' in data_keys:
            data_keys.remove('machine')
            data__machine = data['machine']
            validate___definitions_entry_id(data__machine, custom_formats, (name_prefix or 'data') + '.machine')
        if 'measured_at' in data_keys:
            data_keys.remove('measured_at')
            data__measuredat = data['measured_at']
            validate___definitions_moment(data__measuredat, custom_formats, (name_prefix or 'data') + '.measured_at')
        if 'wall' in data_keys:
            data_keys.remove('wall')
            data__wall = data['wall']
            validate___definitions_moment(data__wall, custom_formats, (name_prefix or 'data') + '.wall')
        if 'clock_flags' in data_keys:
            data_keys.remove('clock_flags')
            data__clockflags = data['clock_flags']
            if not isinstance(data__clockflags, (list, tuple)):
                raise JsonSchemaValueException('type', value=data__clockflags, name='' + (name_prefix or 'data') + '.clock_flags', definition={'type': 'array'}, rule='type')
            data__clockflags_is_list = isinstance(data__clockflags, (list, tuple))
            if data__clockflags_is_list:
                data__clockflags_len = len(data__clockflags)
                if data__clockflags_len > 3:
                    raise JsonSchemaValueException('maxItems', value=data__clockflags, name='' + (name_prefix or 'data') + '.clock_flags', definition={'maxItems': 3}, rule='maxItems')
                for data__clockflags_x, data__clockflags_item in enumerate(data__clockflags):
                    validate___definitions_clock_flag(data__clockflags_item, custom_formats, (name_prefix or 'data') + '.clock_flags[{data__clockflags_x}]'.format(**locals()))
        if 'by' in data_keys:
            data_keys.remove('by')
            data__by = data['by']
            if not isinstance(data__by, str):
                raise JsonSchemaValueException('type', value=data__by, name='' + (name_prefix or 'data') + '.by', definition={'type': 'string'}, rule='type')
            if isinstance(data__by, str):
                data__by_len = len(data__by)
                if data__by_len > 40:
                    raise JsonSchemaValueException('maxLength', value=data__by, name='' + (name_prefix or 'data') + '.by', definition={'maxLength': 40}, rule='maxLength')
        if 'body' in data_keys:
            data_keys.remove('body')
            data__body = data['body']
            if not isinstance(data__body, dict):
                raise JsonSchemaValueException('type', value=data__body, name='' + (name_prefix or 'data') + '.body', definition={'type': 'object'}, rule='type')
        if 'shown' in data_keys:
            data_keys.remove('shown')
            data__shown = data['shown']
            if not isinstance(data__shown, dict):
                raise JsonSchemaValueException('type', value=data__shown, name='' + (name_prefix or 'data') + '.shown', definition={'type': 'object'}, rule='type')
        if 'versions' in data_keys:
            data_keys.remove('versions')
            data__versions = data['versions']
            if not isinstance(data__versions, dict):
                raise JsonSchemaValueException('type', value=data__versions, name='' + (name_prefix or 'data') + '.versions', definition={'type': 'object'}, rule='type')
            data__versions_is_dict = isinstance(data__versions, dict)
            if data__versions_is_dict:
                data__versions__missing_keys = set(['build', 'pycore']) - data__versions.keys()
                if data__versions__missing_keys:
                    raise JsonSchemaValueException('required', value=data__versions, name='' + (name_prefix or 'data') + '.versions', definition={'required': ['build', 'pycore']}, rule='required')
                data__versions_keys = set(data__versions.keys())
                if 'build' in data__versions_keys:
                    data__versions_keys.remove('build')
                    data__versions__build = data__versions['build']
                    validate___definitions_short_text(data__versions__build, custom_formats, (name_prefix or 'data') + '.versions.build')
                if 'pycore' in data__versions_keys:
                    data__versions_keys.remove('pycore')
                    data__versions__pycore = data__versions['pycore']
                    if not isinstance(data__versions__pycore, str):
                        raise JsonSchemaValueException('type', value=data__versions__pycore, name='' + (name_prefix or 'data') + '.versions.pycore', definition={'type': 'string'}, rule='type')
                    if isinstance(data__versions__pycore, str):
                        data__versions__pycore_len = len(data__versions__pycore)
                        if data__versions__pycore_len > 40:
                            raise JsonSchemaValueException('maxLength', value=data__versions__pycore, name='' + (name_prefix or 'data') + '.versions.pycore', definition={'maxLength': 40}, rule='maxLength')
                if data__versions_keys:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.versions must not contain ' + str(data__versions_keys) + ' properties', value=data__versions, name='' + (name_prefix or 'data') + '.versions', definition={'additionalProperties': False}, rule='additionalProperties')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_clock_flag(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, str):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'string'}, rule='type')
    if not (isinstance(data, str) and data == 'back' or (isinstance(data, str) and data == 'future') or (isinstance(data, str) and data == 'zone')):
        raise JsonSchemaValueException('enum', value=data, name='' + (name_prefix or 'data') + '', definition={'enum': ['back', 'future', 'zone']}, rule='enum')
    return data

def validate___definitions_entry_kind(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, str):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'string'}, rule='type')
    if not (isinstance(data, str) and data == 'check' or (isinstance(data, str) and data == 'plan') or (isinstance(data, str) and data == 'pour') or (isinstance(data, str) and data == 'recheck') or (isinstance(data, str) and data == 'clean_out') or (isinstance(data, str) and data == 'additive') or (isinstance(data, str) and data == 'unknown_addition') or (isinstance(data, str) and data == 'machine_set') or (isinstance(data, str) and data == 'fluid_set') or (isinstance(data, str) and data == 'instrument_set') or (isinstance(data, str) and data == 'calibration') or (isinstance(data, str) and data == 'shop_set') or (isinstance(data, str) and data == 'machine_state') or (isinstance(data, str) and data == 'note') or (isinstance(data, str) and data == 'correction') or (isinstance(data, str) and data == 'withdrawal') or (isinstance(data, str) and data == 'decision')):
        raise JsonSchemaValueException('enum', value=data, name='' + (name_prefix or 'data') + '', definition={'enum': ['check', 'plan', 'pour', 'recheck', 'clean_out', 'additive', 'unknown_addition', 'machine_set', 'fluid_set', 'instrument_set', 'calibration', 'shop_set', 'machine_state', 'note', 'correction', 'withdrawal', 'decision']}, rule='enum')
    return data

def validate___definitions_latest_entry(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['entry', 'measured_at', 'age_d', 'certain', 'others']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['entry', 'measured_at', 'age_d', 'certain', 'others']}, rule='required')
        data_keys = set(data.keys())
        if 'entry' in data_keys:
            data_keys.remove('entry')
            data__entry = data['entry']
            validate___definitions_entry_id(data__entry, custom_formats, (name_prefix or 'data') + '.entry')
        if 'measured_at' in data_keys:
            data_keys.remove('measured_at')
            data__measuredat = data['measured_at']
            validate___definitions_moment(data__measuredat, custom_formats, (name_prefix or 'data') + '.measured_at')
        if 'age_d' in data_keys:
            data_keys.remove('age_d')
            data__aged = data['age_d']
            if not isinstance(data__aged, (int, float, Decimal)) or isinstance(data__aged, bool):
                raise JsonSchemaValueException('type', value=data__aged, name='' + (name_prefix or 'data') + '.age_d', definition={'type': 'number'}, rule='type')
        if 'certain' in data_keys:
            data_keys.remove('certain')
            data__certain = data['certain']
            if not isinstance(data__certain, bool):
                raise JsonSchemaValueException('type', value=data__certain, name='' + (name_prefix or 'data') + '.certain', definition={'type': 'boolean'}, rule='type')
        if 'others' in data_keys:
            data_keys.remove('others')
            data__others = data['others']
            if not isinstance(data__others, (list, tuple)):
                raise JsonSchemaValueException('type', value=data__others, name='' + (name_prefix or 'data') + '.others', definition={'type': 'array'}, rule='type')
            data__others_is_list = isinstance(data__others, (list, tuple))
            if data__others_is_list:
                data__others_len = len(data__others)
                for data__others_x, data__others_item in enumerate(data__others):
                    validate___definitions_entry_id(data__others_item, custom_formats, (name_prefix or 'data') + '.others[{data__others_x}]'.format(**locals()))
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_instrument_set_content(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['instrument', 'name', 'shows']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['instrument', 'name', 'shows']}, rule='required')
        data_keys = set(data.keys())
        if 'instrument' in data_keys:
            data_keys.remove('instrument')
            data__instrument = data['instrument']
            validate___definitions_entry_id(data__instrument, custom_formats, (name_prefix or 'data') + '.instrument')
        if 'name' in data_keys:
            data_keys.remove('name')
            data__name = data['name']
            validate___definitions_short_name(data__name, custom_formats, (name_prefix or 'data') + '.name')
        if 'shows' in data_keys:
            data_keys.remove('shows')
            data__shows = data['shows']
            if not isinstance(data__shows, str):
                raise JsonSchemaValueException('type', value=data__shows, name='' + (name_prefix or 'data') + '.shows', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__shows, str) and data__shows == 'brix' or (isinstance(data__shows, str) and data__shows == 'per_cent')):
                raise JsonSchemaValueException('enum', value=data__shows, name='' + (name_prefix or 'data') + '.shows', definition={'enum': ['brix', 'per_cent']}, rule='enum')
        if 'factor_inside' in data_keys:
            data_keys.remove('factor_inside')
            data__factorinside = data['factor_inside']
            validate___definitions_typed(data__factorinside, custom_formats, (name_prefix or 'data') + '.factor_inside')
        if 'compensates' in data_keys:
            data_keys.remove('compensates')
            data__compensates = data['compensates']
            if not isinstance(data__compensates, bool):
                raise JsonSchemaValueException('type', value=data__compensates, name='' + (name_prefix or 'data') + '.compensates', definition={'type': 'boolean'}, rule='type')
        if 'remarks' in data_keys:
            data_keys.remove('remarks')
            data__remarks = data['remarks']
            validate___definitions_remarks(data__remarks, custom_formats, (name_prefix or 'data') + '.remarks')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_short_name(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, str):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'string'}, rule='type')
    if isinstance(data, str):
        data_len = len(data)
        if data_len < 1:
            raise JsonSchemaValueException('minLength', value=data, name='' + (name_prefix or 'data') + '', definition={'minLength': 1}, rule='minLength')
        if data_len > 80:
            raise JsonSchemaValueException('maxLength', value=data, name='' + (name_prefix or 'data') + '', definition={'maxLength': 80}, rule='maxLength')
    return data

def validate___definitions_fluid_set_content(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['fluid', 'definition']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['fluid', 'definition']}, rule='required')
        data_keys = set(data.keys())
        if 'fluid' in data_keys:
            data_keys.remove('fluid')
            data__fluid = data['fluid']
            validate___definitions_entry_id(data__fluid, custom_formats, (name_prefix or 'data') + '.fluid')
        if 'definition' in data_keys:
            data_keys.remove('definition')
            data__definition = data['definition']
            validate___definitions_fluid_typed(data__definition, custom_formats, (name_prefix or 'data') + '.definition')
        if 'target' in data_keys:
            data_keys.remove('target')
            data__target = data['target']
            validate___definitions_target_typed(data__target, custom_formats, (name_prefix or 'data') + '.target')
        if 'mixing' in data_keys:
            data_keys.remove('mixing')
            data__mixing = data['mixing']
            validate___definitions_mixing_typed(data__mixing, custom_formats, (name_prefix or 'data') + '.mixing')
        if 'lot' in data_keys:
            data_keys.remove('lot')
            data__lot = data['lot']
            validate___definitions_short_text(data__lot, custom_formats, (name_prefix or 'data') + '.lot')
        if 'opened' in data_keys:
            data_keys.remove('opened')
            data__opened = data['opened']
            if not isinstance(data__opened, str):
                raise JsonSchemaValueException('type', value=data__opened, name='' + (name_prefix or 'data') + '.opened', definition={'type': 'string'}, rule='type')
            if isinstance(data__opened, str):
                data__opened_len = len(data__opened)
                if data__opened_len > 40:
                    raise JsonSchemaValueException('maxLength', value=data__opened, name='' + (name_prefix or 'data') + '.opened', definition={'maxLength': 40}, rule='maxLength')
        if 'remarks' in data_keys:
            data_keys.remove('remarks')
            data__remarks = data['remarks']
            validate___definitions_remarks(data__remarks, custom_formats, (name_prefix or 'data') + '.remarks')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_decision_content(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['use', 'leave', 'reason']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['use', 'leave', 'reason']}, rule='required')
        data_keys = set(data.keys())
        if 'use' in data_keys:
            data_keys.remove('use')
            data__use = data['use']
            if not isinstance(data__use, (list, tuple)):
                raise JsonSchemaValueException('type', value=data__use, name='' + (name_prefix or 'data') + '.use', definition={'type': 'array'}, rule='type')
            data__use_is_list = isinstance(data__use, (list, tuple))
            if data__use_is_list:
                data__use_len = len(data__use)
                if data__use_len > 50:
                    raise JsonSchemaValueException('maxItems', value=data__use, name='' + (name_prefix or 'data') + '.use', definition={'maxItems': 50}, rule='maxItems')
                for data__use_x, data__use_item in enumerate(data__use):
                    validate___definitions_entry_hash(data__use_item, custom_formats, (name_prefix or 'data') + '.use[{data__use_x}]'.format(**locals()))
        if 'leave' in data_keys:
            data_keys.remove('leave')
            data__leave = data['leave']
            if not isinstance(data__leave, (list, tuple)):
                raise JsonSchemaValueException('type', value=data__leave, name='' + (name_prefix or 'data') + '.leave', definition={'type': 'array'}, rule='type')
            data__leave_is_list = isinstance(data__leave, (list, tuple))
            if data__leave_is_list:
                data__leave_len = len(data__leave)
                if data__leave_len > 50:
                    raise JsonSchemaValueException('maxItems', value=data__leave, name='' + (name_prefix or 'data') + '.leave', definition={'maxItems': 50}, rule='maxItems')
                for data__leave_x, data__leave_item in enumerate(data__leave):
                    validate___definitions_entry_hash(data__leave_item, custom_formats, (name_prefix or 'data') + '.leave[{data__leave_x}]'.format(**locals()))
        if 'reason' in data_keys:
            data_keys.remove('reason')
            data__reason = data['reason']
            validate___definitions_reason(data__reason, custom_formats, (name_prefix or 'data') + '.reason')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_entry_hash(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, str):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'string'}, rule='type')
    if isinstance(data, str):
        if not REGEX_PATTERNS['^[0-9a-f]{64}$'].search(data):
            raise JsonSchemaValueException('pattern', value=data, name='' + (name_prefix or 'data') + '', definition={'pattern': '^[0-9a-f]{64}$'}, rule='pattern')
    return data

def validate___definitions_correction_content(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['corrects', 'reason', 'kind', 'content']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['corrects', 'reason', 'kind', 'content']}, rule='required')
        data_keys = set(data.keys())
        if 'corrects' in data_keys:
            data_keys.remove('corrects')
            data__corrects = data['corrects']
            validate___definitions_entry_id(data__corrects, custom_formats, (name_prefix or 'data') + '.corrects')
        if 'settles' in data_keys:
            data_keys.remove('settles')
            data__settles = data['settles']
            if not isinstance(data__settles, (list, tuple)):
                raise JsonSchemaValueException('type', value=data__settles, name='' + (name_prefix or 'data') + '.settles', definition={'type': 'array'}, rule='type')
            data__settles_is_list = isinstance(data__settles, (list, tuple))
            if data__settles_is_list:
                data__settles_len = len(data__settles)
                if data__settles_len > 50:
                    raise JsonSchemaValueException('maxItems', value=data__settles, name='' + (name_prefix or 'data') + '.settles', definition={'maxItems': 50}, rule='maxItems')
                for data__settles_x, data__settles_item in enumerate(data__settles):
                    validate___definitions_entry_id(data__settles_item, custom_formats, (name_prefix or 'data') + '.settles[{data__settles_x}]'.format(**locals()))
        if 'reason' in data_keys:
            data_keys.remove('reason')
            data__reason = data['reason']
            validate___definitions_reason(data__reason, custom_formats, (name_prefix or 'data') + '.reason')
        if 'kind' in data_keys:
            data_keys.remove('kind')
            data__kind = data['kind']
            validate___definitions_entry_kind(data__kind, custom_formats, (name_prefix or 'data') + '.kind')
        if 'content' in data_keys:
            data_keys.remove('content')
            data__content = data['content']
            if not isinstance(data__content, dict):
                raise JsonSchemaValueException('type', value=data__content, name='' + (name_prefix or 'data') + '.content', definition={'type': 'object'}, rule='type')
        if 'machine' in data_keys:
            data_keys.remove('machine')
            data__machine = data['machine']
            validate___definitions_entry_id(data__machine, custom_formats, (name_prefix or 'data') + '.machine')
        if 'measured_at' in data_keys:
            data_keys.remove('measured_at')
            data__measuredat = data['measured_at']
            validate___definitions_moment(data__measuredat, custom_formats, (name_prefix or 'data') + '.measured_at')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_clean_out_content(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['finished']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['finished']}, rule='required')
        data_keys = set(data.keys())
        if 'finished' in data_keys:
            data_keys.remove('finished')
            data__finished = data['finished']
            if not isinstance(data__finished, bool):
                raise JsonSchemaValueException('type', value=data__finished, name='' + (name_prefix or 'data') + '.finished', definition={'type': 'boolean'}, rule='type')
        if 'steps' in data_keys:
            data_keys.remove('steps')
            data__steps = data['steps']
            if not isinstance(data__steps, (list, tuple)):
                raise JsonSchemaValueException('type', value=data__steps, name='' + (name_prefix or 'data') + '.steps', definition={'type': 'array'}, rule='type')
            data__steps_is_list = isinstance(data__steps, (list, tuple))
            if data__steps_is_list:
                data__steps_len = len(data__steps)
                if data__steps_len > 50:
                    raise JsonSchemaValueException('maxItems', value=data__steps, name='' + (name_prefix or 'data') + '.steps', definition={'maxItems': 50}, rule='maxItems')
                for data__steps_x, data__steps_item in enumerate(data__steps):
                    if not isinstance(data__steps_item, dict):
                        raise JsonSchemaValueException('type', value=data__steps_item, name='' + (name_prefix or 'data') + '.steps[{data__steps_x}]'.format(**locals()) + '', definition={'type': 'object'}, rule='type')
                    data__steps_item_is_dict = isinstance(data__steps_item, dict)
                    if data__steps_item_is_dict:
                        data__steps_item__missing_keys = set(['state', 'at']) - data__steps_item.keys()
                        if data__steps_item__missing_keys:
                            raise JsonSchemaValueException('required', value=data__steps_item, name='' + (name_prefix or 'data') + '.steps[{data__steps_x}]'.format(**locals()) + '', definition={'required': ['state', 'at']}, rule='required')
                        data__steps_item_keys = set(data__steps_item.keys())
                        if 'state' in data__steps_item_keys:
                            data__steps_item_keys.remove('state')
                            data__steps_item__state = data__steps_item['state']
                            if not isinstance(data__steps_item__state, str):
                                raise JsonSchemaValueException('type', value=data__steps_item__state, name='' + (name_prefix or 'data') + '.steps[{data__steps_x}].state'.format(**locals()) + '', definition={'type': 'string'}, rule='type')
                            if not (isinstance(data__steps_item__state, str) and data__steps_item__state == 'ready' or (isinstance(data__steps_item__state, str) and data__steps_item__state == 'locked') or (isinstance(data__steps_item__state, str) and data__steps_item__state == 'skimmed') or (isinstance(data__steps_item__state, str) and data__steps_item__state == 'cleaner_in') or (isinstance(data__steps_item__state, str) and data__steps_item__state == 'ran') or (isinstance(data__steps_item__state, str) and data__steps_item__state == 'drained') or (isinstance(data__steps_item__state, str) and data__steps_item__state == 'chips_out') or (isinstance(data__steps_item__state, str) and data__steps_item__state == 'rinsed') or (isinstance(data__steps_item__state, str) and data__steps_item__state == 'rinse_out') or (isinstance(data__steps_item__state, str) and data__steps_item__state == 'rinsed_again') or (isinstance(data__steps_item__state, str) and data__steps_item__state == 'left') or (isinstance(data__steps_item__state, str) and data__steps_item__state == 'charged') or (isinstance(data__steps_item__state, str) and data__steps_item__state == 'circulated')):
                                raise JsonSchemaValueException('enum', value=data__steps_item__state, name='' + (name_prefix or 'data') + '.steps[{data__steps_x}].state'.format(**locals()) + '', definition={'enum': ['ready', 'locked', 'skimmed', 'cleaner_in', 'ran', 'drained', 'chips_out', 'rinsed', 'rinse_out', 'rinsed_again', 'left', 'charged', 'circulated']}, rule='enum')
                        if 'at' in data__steps_item_keys:
                            data__steps_item_keys.remove('at')
                            data__steps_item__at = data__steps_item['at']
                            validate___definitions_moment(data__steps_item__at, custom_formats, (name_prefix or 'data') + '.steps[{data__steps_x}].at'.format(**locals()))
                        if data__steps_item_keys:
                            raise JsonSchemaValueException('' + (name_prefix or 'data') + '.steps[{data__steps_x}]'.format(**locals()) + ' must not contain ' + str(data__steps_item_keys) + ' properties', value=data__steps_item, name='' + (name_prefix or 'data') + '.steps[{data__steps_x}]'.format(**locals()) + '', definition={'additionalProperties': False}, rule='additionalProperties')
        if 'cleaner' in data_keys:
            data_keys.remove('cleaner')
            data__cleaner = data['cleaner']
            validate___definitions_short_text(data__cleaner, custom_formats, (name_prefix or 'data') + '.cleaner')
        if 'waste' in data_keys:
            data_keys.remove('waste')
            data__waste = data['waste']
            validate___definitions_typed(data__waste, custom_formats, (name_prefix or 'data') + '.waste')
        if 'waste_note' in data_keys:
            data_keys.remove('waste_note')
            data__wastenote = data['waste_note']
            if not isinstance(data__wastenote, str):
                raise JsonSchemaValueException('type', value=data__wastenote, name='' + (name_prefix or 'data') + '.waste_note', definition={'type': 'string'}, rule='type')
            if isinstance(data__wastenote, str):
                data__wastenote_len = len(data__wastenote)
                if data__wastenote_len > 200:
                    raise JsonSchemaValueException('maxLength', value=data__wastenote, name='' + (name_prefix or 'data') + '.waste_note', definition={'maxLength': 200}, rule='maxLength')
        if 'rinse' in data_keys:
            data_keys.remove('rinse')
            data__rinse = data['rinse']
            validate___definitions_typed(data__rinse, custom_formats, (name_prefix or 'data') + '.rinse')
        if 'left' in data_keys:
            data_keys.remove('left')
            data__left = data['left']
            validate___definitions_typed(data__left, custom_formats, (name_prefix or 'data') + '.left')
        if 'left_strength' in data_keys:
            data_keys.remove('left_strength')
            data__leftstrength = data['left_strength']
            validate___definitions_typed(data__leftstrength, custom_formats, (name_prefix or 'data') + '.left_strength')
        if 'charge' in data_keys:
            data_keys.remove('charge')
            data__charge = data['charge']
            validate___definitions_bucket_rows(data__charge, custom_formats, (name_prefix or 'data') + '.charge')
        if 'fluid' in data_keys:
            data_keys.remove('fluid')
            data__fluid = data['fluid']
            validate___definitions_entry_id(data__fluid, custom_formats, (name_prefix or 'data') + '.fluid')
        if 'lot' in data_keys:
            data_keys.remove('lot')
            data__lot = data['lot']
            validate___definitions_short_text(data__lot, custom_formats, (name_prefix or 'data') + '.lot')
        if 'remarks' in data_keys:
            data_keys.remove('remarks')
            data__remarks = data['remarks']
            validate___definitions_remarks(data__remarks, custom_formats, (name_prefix or 'data') + '.remarks')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_check_content(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set([]) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': []}, rule='required')
        data_keys = set(data.keys())
        if 'machine' in data_keys:
            data_keys.remove('machine')
            data__machine = data['machine']
            validate___definitions_machine_typed(data__machine, custom_formats, (name_prefix or 'data') + '.machine')
        if 'dip' in data_keys:
            data_keys.remove('dip')
            data__dip = data['dip']
            validate___definitions_dip_typed(data__dip, custom_formats, (name_prefix or 'data') + '.dip')
        if 'reading' in data_keys:
            data_keys.remove('reading')
            data__reading = data['reading']
            validate___definitions_reading_typed(data__reading, custom_formats, (name_prefix or 'data') + '.reading')
        if 'aim' in data_keys:
            data_keys.remove('aim')
            data__aim = data['aim']
            validate___definitions_typed(data__aim, custom_formats, (name_prefix or 'data') + '.aim')
        if 'fill_to_depth' in data_keys:
            data_keys.remove('fill_to_depth')
            data__filltodepth = data['fill_to_depth']
            validate___definitions_typed(data__filltodepth, custom_formats, (name_prefix or 'data') + '.fill_to_depth')
        if 'concentrate_at_hand' in data_keys:
            data_keys.remove('concentrate_at_hand')
            data__concentrateathand = data['concentrate_at_hand']
            validate___definitions_typed(data__concentrateathand, custom_formats, (name_prefix or 'data') + '.concentrate_at_hand')
        if 'hidden_strength' in data_keys:
            data_keys.remove('hidden_strength')
            data__hiddenstrength = data['hidden_strength']
            validate___definitions_typed(data__hiddenstrength, custom_formats, (name_prefix or 'data') + '.hidden_strength')
        if 'look' in data_keys:
            data_keys.remove('look')
            data__look = data['look']
            if not isinstance(data__look, (list, tuple)):
                raise JsonSchemaValueException('type', value=data__look, name='' + (name_prefix or 'data') + '.look', definition={'type': 'array'}, rule='type')
            data__look_is_list = isinstance(data__look, (list, tuple))
            if data__look_is_list:
                data__look_len = len(data__look)
                if data__look_len > 20:
                    raise JsonSchemaValueException('maxItems', value=data__look, name='' + (name_prefix or 'data') + '.look', definition={'maxItems': 20}, rule='maxItems')
                for data__look_x, data__look_item in enumerate(data__look):
                    validate___definitions_look(data__look_item, custom_formats, (name_prefix or 'data') + '.look[{data__look_x}]'.format(**locals()))
        if 'ph' in data_keys:
            data_keys.remove('ph')
            data__ph = data['ph']
            validate___definitions_typed(data__ph, custom_formats, (name_prefix or 'data') + '.ph')
        if 'first_fill_ph' in data_keys:
            data_keys.remove('first_fill_ph')
            data__firstfillph = data['first_fill_ph']
            validate___definitions_typed(data__firstfillph, custom_formats, (name_prefix or 'data') + '.first_fill_ph')
        if 'temperature' in data_keys:
            data_keys.remove('temperature')
            data__temperature = data['temperature']
            validate___definitions_typed(data__temperature, custom_formats, (name_prefix or 'data') + '.temperature')
        if 'nitrite' in data_keys:
            data_keys.remove('nitrite')
            data__nitrite = data['nitrite']
            validate___definitions_typed(data__nitrite, custom_formats, (name_prefix or 'data') + '.nitrite')
        if 'dip_slide' in data_keys:
            data_keys.remove('dip_slide')
            data__dipslide = data['dip_slide']
            if not isinstance(data__dipslide, dict):
                raise JsonSchemaValueException('type', value=data__dipslide, name='' + (name_prefix or 'data') + '.dip_slide', definition={'type': 'object'}, rule='type')
            data__dipslide_is_dict = isinstance(data__dipslide, dict)
            if data__dipslide_is_dict:
                data__dipslide__missing_keys = set([]) - data__dipslide.keys()
                if data__dipslide__missing_keys:
                    raise JsonSchemaValueException('required', value=data__dipslide, name='' + (name_prefix or 'data') + '.dip_slide', definition={'required': []}, rule='required')
                data__dipslide_keys = set(data__dipslide.keys())
                if 'germs' in data__dipslide_keys:
                    data__dipslide_keys.remove('germs')
                    data__dipslide__germs = data__dipslide['germs']
                    validate___definitions_typed(data__dipslide__germs, custom_formats, (name_prefix or 'data') + '.dip_slide.germs')
                if 'yeast' in data__dipslide_keys:
                    data__dipslide_keys.remove('yeast')
                    data__dipslide__yeast = data__dipslide['yeast']
                    validate___definitions_typed(data__dipslide__yeast, custom_formats, (name_prefix or 'data') + '.dip_slide.yeast')
                if data__dipslide_keys:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.dip_slide must not contain ' + str(data__dipslide_keys) + ' properties', value=data__dipslide, name='' + (name_prefix or 'data') + '.dip_slide', definition={'additionalProperties': False}, rule='additionalProperties')
        if 'instrument' in data_keys:
            data_keys.remove('instrument')
            data__instrument = data['instrument']
            validate___definitions_entry_id(data__instrument, custom_formats, (name_prefix or 'data') + '.instrument')
        if 'of' in data_keys:
            data_keys.remove('of')
            data__of = data['of']
            validate___definitions_entry_id(data__of, custom_formats, (name_prefix or 'data') + '.of')
        if 'remarks' in data_keys:
            data_keys.remove('remarks')
            data__remarks = data['remarks']
            validate___definitions_remarks(data__remarks, custom_formats, (name_prefix or 'data') + '.remarks')
        if 'second' in data_keys:
            data_keys.remove('second')
            data__second = data['second']
            validate___definitions_second_typed(data__second, custom_formats, (name_prefix or 'data') + '.second')
        if 'now' in data_keys:
            data_keys.remove('now')
            data__now = data['now']
            if not isinstance(data__now, str):
                raise JsonSchemaValueException('type', value=data__now, name='' + (name_prefix or 'data') + '.now', definition={'type': 'string'}, rule='type')
            if isinstance(data__now, str):
                data__now_len = len(data__now)
                if data__now_len > 40:
                    raise JsonSchemaValueException('maxLength', value=data__now, name='' + (name_prefix or 'data') + '.now', definition={'maxLength': 40}, rule='maxLength')
        if 'usual' in data_keys:
            data_keys.remove('usual')
            data__usual = data['usual']
            validate___definitions_typed(data__usual, custom_formats, (name_prefix or 'data') + '.usual')
        if 'last' in data_keys:
            data_keys.remove('last')
            data__last = data['last']
            if not isinstance(data__last, dict):
                raise JsonSchemaValueException('type', value=data__last, name='' + (name_prefix or 'data') + '.last', definition={'type': 'object'}, rule='type')
            data__last_is_dict = isinstance(data__last, dict)
            if data__last_is_dict:
                data__last__missing_keys = set(['check', 'at']) - data__last.keys()
                if data__last__missing_keys:
                    raise JsonSchemaValueException('required', value=data__last, name='' + (name_prefix or 'data') + '.last', definition={'required': ['check', 'at']}, rule='required')
                data__last_keys = set(data__last.keys())
                if 'check' in data__last_keys:
                    data__last_keys.remove('check')
                    data__last__check = data__last['check']
                    validate___definitions_plan_check_body(data__last__check, custom_formats, (name_prefix or 'data') + '.last.check')
                if 'at' in data__last_keys:
                    data__last_keys.remove('at')
                    data__last__at = data__last['at']
                    if not isinstance(data__last__at, str):
                        raise JsonSchemaValueException('type', value=data__last__at, name='' + (name_prefix or 'data') + '.last.at', definition={'type': 'string'}, rule='type')
                    if isinstance(data__last__at, str):
                        data__last__at_len = len(data__last__at)
                        if data__last__at_len > 40:
                            raise JsonSchemaValueException('maxLength', value=data__last__at, name='' + (name_prefix or 'data') + '.last.at', definition={'maxLength': 40}, rule='maxLength')
                if data__last_keys:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.last must not contain ' + str(data__last_keys) + ' properties', value=data__last, name='' + (name_prefix or 'data') + '.last', definition={'additionalProperties': False}, rule='additionalProperties')
        if 'read' in data_keys:
            data_keys.remove('read')
            data__read = data['read']
            if not isinstance(data__read, dict):
                raise JsonSchemaValueException('type', value=data__read, name='' + (name_prefix or 'data') + '.read', definition={'type': 'object'}, rule='type')
            data__read_is_dict = isinstance(data__read, dict)
            if data__read_is_dict:
                data__read__missing_keys = set(['machine', 'reading', 'at']) - data__read.keys()
                if data__read__missing_keys:
                    raise JsonSchemaValueException('required', value=data__read, name='' + (name_prefix or 'data') + '.read', definition={'required': ['machine', 'reading', 'at']}, rule='required')
                data__read_keys = set(data__read.keys())
                if 'machine' in data__read_keys:
                    data__read_keys.remove('machine')
                    data__read__machine = data__read['machine']
                    validate___definitions_machine_typed(data__read__machine, custom_formats, (name_prefix or 'data') + '.read.machine')
                if 'reading' in data__read_keys:
                    data__read_keys.remove('reading')
                    data__read__reading = data__read['reading']
                    validate___definitions_reading_typed(data__read__reading, custom_formats, (name_prefix or 'data') + '.read.reading')
                if 'at' in data__read_keys:
                    data__read_keys.remove('at')
                    data__read__at = data__read['at']
                    if not isinstance(data__read__at, str):
                        raise JsonSchemaValueException('type', value=data__read__at, name='' + (name_prefix or 'data') + '.read.at', definition={'type': 'string'}, rule='type')
                    if isinstance(data__read__at, str):
                        data__read__at_len = len(data__read__at)
                        if data__read__at_len > 40:
                            raise JsonSchemaValueException('maxLength', value=data__read__at, name='' + (name_prefix or 'data') + '.read.at', definition={'maxLength': 40}, rule='maxLength')
                if data__read_keys:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.read must not contain ' + str(data__read_keys) + ' properties', value=data__read, name='' + (name_prefix or 'data') + '.read', definition={'additionalProperties': False}, rule='additionalProperties')
        if 'way' in data_keys:
            data_keys.remove('way')
            data__way = data['way']
            if not isinstance(data__way, int) and (not (isinstance(data__way, float) and data__way.is_integer())) or isinstance(data__way, bool):
                raise JsonSchemaValueException('type', value=data__way, name='' + (name_prefix or 'data') + '.way', definition={'type': 'integer'}, rule='type')
            if isinstance(data__way, (int, float, Decimal)) and (not isinstance(data__way, bool)):
                if data__way < 0:
                    raise JsonSchemaValueException('minimum', value=data__way, name='' + (name_prefix or 'data') + '.way', definition={'minimum': 0}, rule='minimum')
                if data__way > 100:
                    raise JsonSchemaValueException('maximum', value=data__way, name='' + (name_prefix or 'data') + '.way', definition={'maximum': 100}, rule='maximum')
        if 'despite' in data_keys:
            data_keys.remove('despite')
            data__despite = data['despite']
            validate___definitions_entry_id(data__despite, custom_formats, (name_prefix or 'data') + '.despite')
        if 'topped_up_with' in data_keys:
            data_keys.remove('topped_up_with')
            data__toppedupwith = data['topped_up_with']
            if not isinstance(data__toppedupwith, str):
                raise JsonSchemaValueException('type', value=data__toppedupwith, name='' + (name_prefix or 'data') + '.topped_up_with', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__toppedupwith, str) and data__toppedupwith == 'mains' or (isinstance(data__toppedupwith, str) and data__toppedupwith == 'demineralised') or (isinstance(data__toppedupwith, str) and data__toppedupwith == 'softened') or (isinstance(data__toppedupwith, str) and data__toppedupwith == 'unknown')):
                raise JsonSchemaValueException('enum', value=data__toppedupwith, name='' + (name_prefix or 'data') + '.topped_up_with', definition={'enum': ['mains', 'demineralised', 'softened', 'unknown']}, rule='enum')
        if 'level_change' in data_keys:
            data_keys.remove('level_change')
            data__levelchange = data['level_change']
            if not isinstance(data__levelchange, str):
                raise JsonSchemaValueException('type', value=data__levelchange, name='' + (name_prefix or 'data') + '.level_change', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__levelchange, str) and data__levelchange == 'evaporated' or (isinstance(data__levelchange, str) and data__levelchange == 'leak') or (isinstance(data__levelchange, str) and data__levelchange == 'taken_out') or (isinstance(data__levelchange, str) and data__levelchange == 'poured_in') or (isinstance(data__levelchange, str) and data__levelchange == 'water_getting_in') or (isinstance(data__levelchange, str) and data__levelchange == 'measured_wrong') or (isinstance(data__levelchange, str) and data__levelchange == 'unknown')):
                raise JsonSchemaValueException('enum', value=data__levelchange, name='' + (name_prefix or 'data') + '.level_change', definition={'enum': ['evaporated', 'leak', 'taken_out', 'poured_in', 'water_getting_in', 'measured_wrong', 'unknown']}, rule='enum')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_second_typed(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['method', 'shows']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['method', 'shows']}, rule='required')
        data_keys = set(data.keys())
        if 'method' in data_keys:
            data_keys.remove('method')
            data__method = data['method']
            if not isinstance(data__method, str):
                raise JsonSchemaValueException('type', value=data__method, name='' + (name_prefix or 'data') + '.method', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__method, str) and data__method == 'acid_split' or (isinstance(data__method, str) and data__method == 'titration')):
                raise JsonSchemaValueException('enum', value=data__method, name='' + (name_prefix or 'data') + '.method', definition={'enum': ['acid_split', 'titration']}, rule='enum')
        if 'shows' in data_keys:
            data_keys.remove('shows')
            data__shows = data['shows']
            validate___definitions_typed(data__shows, custom_formats, (name_prefix or 'data') + '.shows')
        if 'factor' in data_keys:
            data_keys.remove('factor')
            data__factor = data['factor']
            validate___definitions_typed(data__factor, custom_formats, (name_prefix or 'data') + '.factor')
        if 'u' in data_keys:
            data_keys.remove('u')
            data__u = data['u']
            validate___definitions_typed(data__u, custom_formats, (name_prefix or 'data') + '.u')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_look(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, str):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'string'}, rule='type')
    if not (isinstance(data, str) and data == 'floating_oil' or (isinstance(data, str) and data == 'foam') or (isinstance(data, str) and data == 'split') or (isinstance(data, str) and data == 'cream') or (isinstance(data, str) and data == 'grey_or_brown') or (isinstance(data, str) and data == 'smell') or (isinstance(data, str) and data == 'slime') or (isinstance(data, str) and data == 'rust') or (isinstance(data, str) and data == 'chips_or_sludge') or (isinstance(data, str) and data == 'skin_complaint') or (isinstance(data, str) and data == 'level_odd') or (isinstance(data, str) and data == 'normal')):
        raise JsonSchemaValueException('enum', value=data, name='' + (name_prefix or 'data') + '', definition={'enum': ['floating_oil', 'foam', 'split', 'cream', 'grey_or_brown', 'smell', 'slime', 'rust', 'chips_or_sludge', 'skin_complaint', 'level_odd', 'normal']}, rule='enum')
    return data

def validate___definitions_reading_typed(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['shows']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['shows']}, rule='required')
        data_keys = set(data.keys())
        if 'shows' in data_keys:
            data_keys.remove('shows')
            data__shows = data['shows']
            validate___definitions_typed(data__shows, custom_formats, (name_prefix or 'data') + '.shows')
        if 'how' in data_keys:
            data_keys.remove('how')
            data__how = data['how']
            if not isinstance(data__how, str):
                raise JsonSchemaValueException('type', value=data__how, name='' + (name_prefix or 'data') + '.how', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__how, str) and data__how == 'digital' or (isinstance(data__how, str) and data__how == 'optical') or (isinstance(data__how, str) and data__how == 'optical_oily') or (isinstance(data__how, str) and data__how == 'blurred')):
                raise JsonSchemaValueException('enum', value=data__how, name='' + (name_prefix or 'data') + '.how', definition={'enum': ['digital', 'optical', 'optical_oily', 'blurred']}, rule='enum')
        if 'u' in data_keys:
            data_keys.remove('u')
            data__u = data['u']
            validate___definitions_typed(data__u, custom_formats, (name_prefix or 'data') + '.u')
        if 'again' in data_keys:
            data_keys.remove('again')
            data__again = data['again']
            if not isinstance(data__again, (list, tuple)):
                raise JsonSchemaValueException('type', value=data__again, name='' + (name_prefix or 'data') + '.again', definition={'type': 'array'}, rule='type')
            data__again_is_list = isinstance(data__again, (list, tuple))
            if data__again_is_list:
                data__again_len = len(data__again)
                if data__again_len < 1:
                    raise JsonSchemaValueException('minItems', value=data__again, name='' + (name_prefix or 'data') + '.again', definition={'minItems': 1}, rule='minItems')
                if data__again_len > 9:
                    raise JsonSchemaValueException('maxItems', value=data__again, name='' + (name_prefix or 'data') + '.again', definition={'maxItems': 9}, rule='maxItems')
                for data__again_x, data__again_item in enumerate(data__again):
                    validate___definitions_typed(data__again_item, custom_formats, (name_prefix or 'data') + '.again[{data__again_x}]'.format(**locals()))
        if 'temperature' in data_keys:
            data_keys.remove('temperature')
            data__temperature = data['temperature']
            validate___definitions_typed(data__temperature, custom_formats, (name_prefix or 'data') + '.temperature')
        if 'diluted' in data_keys:
            data_keys.remove('diluted')
            data__diluted = data['diluted']
            validate___definitions_typed(data__diluted, custom_formats, (name_prefix or 'data') + '.diluted')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_dip_typed(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['depth']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['depth']}, rule='required')
        data_keys = set(data.keys())
        if 'depth' in data_keys:
            data_keys.remove('depth')
            data__depth = data['depth']
            validate___definitions_typed(data__depth, custom_formats, (name_prefix or 'data') + '.depth')
        if 'how' in data_keys:
            data_keys.remove('how')
            data__how = data['how']
            if not isinstance(data__how, str):
                raise JsonSchemaValueException('type', value=data__how, name='' + (name_prefix or 'data') + '.how', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__how, str) and data__how == 'hard_floor' or (isinstance(data__how, str) and data__how == 'through_slot') or (isinstance(data__how, str) and data__how == 'running') or (isinstance(data__how, str) and data__how == 'chips') or (isinstance(data__how, str) and data__how == 'unsure')):
                raise JsonSchemaValueException('enum', value=data__how, name='' + (name_prefix or 'data') + '.how', definition={'enum': ['hard_floor', 'through_slot', 'running', 'chips', 'unsure']}, rule='enum')
        if 'u' in data_keys:
            data_keys.remove('u')
            data__u = data['u']
            validate___definitions_typed(data__u, custom_formats, (name_prefix or 'data') + '.u')
        if 'read_as' in data_keys:
            data_keys.remove('read_as')
            data__readas = data['read_as']
            if not isinstance(data__readas, str):
                raise JsonSchemaValueException('type', value=data__readas, name='' + (name_prefix or 'data') + '.read_as', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__readas, str) and data__readas == 'depth' or (isinstance(data__readas, str) and data__readas == 'volume') or (isinstance(data__readas, str) and data__readas == 'gauge')):
                raise JsonSchemaValueException('enum', value=data__readas, name='' + (name_prefix or 'data') + '.read_as', definition={'enum': ['depth', 'volume', 'gauge']}, rule='enum')
        if 'gauge_to' in data_keys:
            data_keys.remove('gauge_to')
            data__gaugeto = data['gauge_to']
            validate___definitions_typed(data__gaugeto, custom_formats, (name_prefix or 'data') + '.gauge_to')
        if 'clean_side' in data_keys:
            data_keys.remove('clean_side')
            data__cleanside = data['clean_side']
            validate___definitions_typed(data__cleanside, custom_formats, (name_prefix or 'data') + '.clean_side')
        if 'pump' in data_keys:
            data_keys.remove('pump')
            data__pump = data['pump']
            if not isinstance(data__pump, str):
                raise JsonSchemaValueException('type', value=data__pump, name='' + (name_prefix or 'data') + '.pump', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__pump, str) and data__pump == 'stopped' or (isinstance(data__pump, str) and data__pump == 'running')):
                raise JsonSchemaValueException('enum', value=data__pump, name='' + (name_prefix or 'data') + '.pump', definition={'enum': ['stopped', 'running']}, rule='enum')
        if 'waited' in data_keys:
            data_keys.remove('waited')
            data__waited = data['waited']
            if not isinstance(data__waited, bool):
                raise JsonSchemaValueException('type', value=data__waited, name='' + (name_prefix or 'data') + '.waited', definition={'type': 'boolean'}, rule='type')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_calibration_content(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['of']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['of']}, rule='required')
        data_keys = set(data.keys())
        if 'of' in data_keys:
            data_keys.remove('of')
            data__of = data['of']
            if not isinstance(data__of, str):
                raise JsonSchemaValueException('type', value=data__of, name='' + (name_prefix or 'data') + '.of', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__of, str) and data__of == 'instrument'):
                raise JsonSchemaValueException('enum', value=data__of, name='' + (name_prefix or 'data') + '.of', definition={'enum': ['instrument']}, rule='enum')
        if 'instrument' in data_keys:
            data_keys.remove('instrument')
            data__instrument = data['instrument']
            validate___definitions_entry_id(data__instrument, custom_formats, (name_prefix or 'data') + '.instrument')
        if 'zero' in data_keys:
            data_keys.remove('zero')
            data__zero = data['zero']
            validate___definitions_typed(data__zero, custom_formats, (name_prefix or 'data') + '.zero')
        if 'shows' in data_keys:
            data_keys.remove('shows')
            data__shows = data['shows']
            validate___definitions_typed(data__shows, custom_formats, (name_prefix or 'data') + '.shows')
        if 'reference' in data_keys:
            data_keys.remove('reference')
            data__reference = data['reference']
            validate___definitions_typed(data__reference, custom_formats, (name_prefix or 'data') + '.reference')
        if 'temperature' in data_keys:
            data_keys.remove('temperature')
            data__temperature = data['temperature']
            validate___definitions_typed(data__temperature, custom_formats, (name_prefix or 'data') + '.temperature')
        if 'remarks' in data_keys:
            data_keys.remove('remarks')
            data__remarks = data['remarks']
            validate___definitions_remarks(data__remarks, custom_formats, (name_prefix or 'data') + '.remarks')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_additive_content(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['name']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['name']}, rule='required')
        data_keys = set(data.keys())
        if 'name' in data_keys:
            data_keys.remove('name')
            data__name = data['name']
            validate___definitions_short_name(data__name, custom_formats, (name_prefix or 'data') + '.name')
        if 'amount' in data_keys:
            data_keys.remove('amount')
            data__amount = data['amount']
            validate___definitions_typed(data__amount, custom_formats, (name_prefix or 'data') + '.amount')
        if 'agreed_with' in data_keys:
            data_keys.remove('agreed_with')
            data__agreedwith = data['agreed_with']
            validate___definitions_short_text(data__agreedwith, custom_formats, (name_prefix or 'data') + '.agreed_with')
        if 'remarks' in data_keys:
            data_keys.remove('remarks')
            data__remarks = data['remarks']
            validate___definitions_remarks(data__remarks, custom_formats, (name_prefix or 'data') + '.remarks')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_write_export_body(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['lines', 'now', 'build']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['lines', 'now', 'build']}, rule='required')
        data_keys = set(data.keys())
        if 'lines' in data_keys:
            data_keys.remove('lines')
            data__lines = data['lines']
            if not isinstance(data__lines, (list, tuple)):
                raise JsonSchemaValueException('type', value=data__lines, name='' + (name_prefix or 'data') + '.lines', definition={'type': 'array'}, rule='type')
            data__lines_is_list = isinstance(data__lines, (list, tuple))
            if data__lines_is_list:
                data__lines_len = len(data__lines)
                if data__lines_len > 50000:
                    raise JsonSchemaValueException('maxItems', value=data__lines, name='' + (name_prefix or 'data') + '.lines', definition={'maxItems': 50000}, rule='maxItems')
                for data__lines_x, data__lines_item in enumerate(data__lines):
                    if not isinstance(data__lines_item, str):
                        raise JsonSchemaValueException('type', value=data__lines_item, name='' + (name_prefix or 'data') + '.lines[{data__lines_x}]'.format(**locals()) + '', definition={'type': 'string'}, rule='type')
        if 'heads' in data_keys:
            data_keys.remove('heads')
            data__heads = data['heads']
            if not isinstance(data__heads, (list, tuple)):
                raise JsonSchemaValueException('type', value=data__heads, name='' + (name_prefix or 'data') + '.heads', definition={'type': 'array'}, rule='type')
            data__heads_is_list = isinstance(data__heads, (list, tuple))
            if data__heads_is_list:
                data__heads_len = len(data__heads)
                if data__heads_len > 1000:
                    raise JsonSchemaValueException('maxItems', value=data__heads, name='' + (name_prefix or 'data') + '.heads', definition={'maxItems': 1000}, rule='maxItems')
                for data__heads_x, data__heads_item in enumerate(data__heads):
                    validate___definitions_log_head(data__heads_item, custom_formats, (name_prefix or 'data') + '.heads[{data__heads_x}]'.format(**locals()))
        if 'now' in data_keys:
            data_keys.remove('now')
            data__now = data['now']
            validate___definitions_moment(data__now, custom_formats, (name_prefix or 'data') + '.now')
        if 'build' in data_keys:
            data_keys.remove('build')
            data__build = data['build']
            if not isinstance(data__build, str):
                raise JsonSchemaValueException('type', value=data__build, name='' + (name_prefix or 'data') + '.build', definition={'type': 'string'}, rule='type')
            if isinstance(data__build, str):
                data__build_len = len(data__build)
                if data__build_len > 80:
                    raise JsonSchemaValueException('maxLength', value=data__build, name='' + (name_prefix or 'data') + '.build', definition={'maxLength': 80}, rule='maxLength')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_log_head(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['log', 'count', 'head']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['log', 'count', 'head']}, rule='required')
        data_keys = set(data.keys())
        if 'log' in data_keys:
            data_keys.remove('log')
            data__log = data['log']
            validate___definitions_entry_id(data__log, custom_formats, (name_prefix or 'data') + '.log')
        if 'count' in data_keys:
            data_keys.remove('count')
            data__count = data['count']
            if not isinstance(data__count, int) and (not (isinstance(data__count, float) and data__count.is_integer())) or isinstance(data__count, bool):
                raise JsonSchemaValueException('type', value=data__count, name='' + (name_prefix or 'data') + '.count', definition={'type': 'integer'}, rule='type')
            if isinstance(data__count, (int, float, Decimal)) and (not isinstance(data__count, bool)):
                if data__count < 1:
                    raise JsonSchemaValueException('minimum', value=data__count, name='' + (name_prefix or 'data') + '.count', definition={'minimum': 1}, rule='minimum')
                if data__count > 1000000000:
                    raise JsonSchemaValueException('maximum', value=data__count, name='' + (name_prefix or 'data') + '.count', definition={'maximum': 1000000000}, rule='maximum')
        if 'head' in data_keys:
            data_keys.remove('head')
            data__head = data['head']
            validate___definitions_entry_hash(data__head, custom_formats, (name_prefix or 'data') + '.head')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_write_csv_body(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['lines', 'now']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['lines', 'now']}, rule='required')
        data_keys = set(data.keys())
        if 'lines' in data_keys:
            data_keys.remove('lines')
            data__lines = data['lines']
            if not isinstance(data__lines, (list, tuple)):
                raise JsonSchemaValueException('type', value=data__lines, name='' + (name_prefix or 'data') + '.lines', definition={'type': 'array'}, rule='type')
            data__lines_is_list = isinstance(data__lines, (list, tuple))
            if data__lines_is_list:
                data__lines_len = len(data__lines)
                if data__lines_len > 50000:
                    raise JsonSchemaValueException('maxItems', value=data__lines, name='' + (name_prefix or 'data') + '.lines', definition={'maxItems': 50000}, rule='maxItems')
                for data__lines_x, data__lines_item in enumerate(data__lines):
                    if not isinstance(data__lines_item, str):
                        raise JsonSchemaValueException('type', value=data__lines_item, name='' + (name_prefix or 'data') + '.lines[{data__lines_x}]'.format(**locals()) + '', definition={'type': 'string'}, rule='type')
        if 'now' in data_keys:
            data_keys.remove('now')
            data__now = data['now']
            validate___definitions_moment(data__now, custom_formats, (name_prefix or 'data') + '.now')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_try_sump_body(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['check', 'changes']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['check', 'changes']}, rule='required')
        data_keys = set(data.keys())
        if 'check' in data_keys:
            data_keys.remove('check')
            data__check = data['check']
            validate___definitions_plan_check_body(data__check, custom_formats, (name_prefix or 'data') + '.check')
        if 'changes' in data_keys:
            data_keys.remove('changes')
            data__changes = data['changes']
            if not isinstance(data__changes, (list, tuple)):
                raise JsonSchemaValueException('type', value=data__changes, name='' + (name_prefix or 'data') + '.changes', definition={'type': 'array'}, rule='type')
            data__changes_is_list = isinstance(data__changes, (list, tuple))
            if data__changes_is_list:
                data__changes_len = len(data__changes)
                if data__changes_len > 60:
                    raise JsonSchemaValueException('maxItems', value=data__changes, name='' + (name_prefix or 'data') + '.changes', definition={'maxItems': 60}, rule='maxItems')
                for data__changes_x, data__changes_item in enumerate(data__changes):
                    validate___definitions_change_typed(data__changes_item, custom_formats, (name_prefix or 'data') + '.changes[{data__changes_x}]'.format(**locals()))
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_change_typed(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['kind']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['kind']}, rule='required')
        data_keys = set(data.keys())
        if 'kind' in data_keys:
            data_keys.remove('kind')
            data__kind = data['kind']
            if not isinstance(data__kind, str):
                raise JsonSchemaValueException('type', value=data__kind, name='' + (name_prefix or 'data') + '.kind', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__kind, str) and data__kind == 'evaporate' or (isinstance(data__kind, str) and data__kind == 'carry_out') or (isinstance(data__kind, str) and data__kind == 'pour')):
                raise JsonSchemaValueException('enum', value=data__kind, name='' + (name_prefix or 'data') + '.kind', definition={'enum': ['evaporate', 'carry_out', 'pour']}, rule='enum')
        if 'volume' in data_keys:
            data_keys.remove('volume')
            data__volume = data['volume']
            validate___definitions_typed(data__volume, custom_formats, (name_prefix or 'data') + '.volume')
        if 'count' in data_keys:
            data_keys.remove('count')
            data__count = data['count']
            if not isinstance(data__count, int) and (not (isinstance(data__count, float) and data__count.is_integer())) or isinstance(data__count, bool):
                raise JsonSchemaValueException('type', value=data__count, name='' + (name_prefix or 'data') + '.count', definition={'type': 'integer'}, rule='type')
            if isinstance(data__count, (int, float, Decimal)) and (not isinstance(data__count, bool)):
                if data__count < 1:
                    raise JsonSchemaValueException('minimum', value=data__count, name='' + (name_prefix or 'data') + '.count', definition={'minimum': 1}, rule='minimum')
                if data__count > 1000:
                    raise JsonSchemaValueException('maximum', value=data__count, name='' + (name_prefix or 'data') + '.count', definition={'maximum': 1000}, rule='maximum')
        if 'water' in data_keys:
            data_keys.remove('water')
            data__water = data['water']
            validate___definitions_typed(data__water, custom_formats, (name_prefix or 'data') + '.water')
        if 'concentrate' in data_keys:
            data_keys.remove('concentrate')
            data__concentrate = data['concentrate']
            validate___definitions_typed(data__concentrate, custom_formats, (name_prefix or 'data') + '.concentrate')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_trend_body(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['lines', 'now', 'machine']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['lines', 'now', 'machine']}, rule='required')
        data_keys = set(data.keys())
        if 'lines' in data_keys:
            data_keys.remove('lines')
            data__lines = data['lines']
            if not isinstance(data__lines, (list, tuple)):
                raise JsonSchemaValueException('type', value=data__lines, name='' + (name_prefix or 'data') + '.lines', definition={'type': 'array'}, rule='type')
            data__lines_is_list = isinstance(data__lines, (list, tuple))
            if data__lines_is_list:
                data__lines_len = len(data__lines)
                if data__lines_len > 50000:
                    raise JsonSchemaValueException('maxItems', value=data__lines, name='' + (name_prefix or 'data') + '.lines', definition={'maxItems': 50000}, rule='maxItems')
                for data__lines_x, data__lines_item in enumerate(data__lines):
                    if not isinstance(data__lines_item, str):
                        raise JsonSchemaValueException('type', value=data__lines_item, name='' + (name_prefix or 'data') + '.lines[{data__lines_x}]'.format(**locals()) + '', definition={'type': 'string'}, rule='type')
        if 'heads' in data_keys:
            data_keys.remove('heads')
            data__heads = data['heads']
            if not isinstance(data__heads, (list, tuple)):
                raise JsonSchemaValueException('type', value=data__heads, name='' + (name_prefix or 'data') + '.heads', definition={'type': 'array'}, rule='type')
            data__heads_is_list = isinstance(data__heads, (list, tuple))
            if data__heads_is_list:
                data__heads_len = len(data__heads)
                if data__heads_len > 1000:
                    raise JsonSchemaValueException('maxItems', value=data__heads, name='' + (name_prefix or 'data') + '.heads', definition={'maxItems': 1000}, rule='maxItems')
                for data__heads_x, data__heads_item in enumerate(data__heads):
                    validate___definitions_log_head(data__heads_item, custom_formats, (name_prefix or 'data') + '.heads[{data__heads_x}]'.format(**locals()))
        if 'now' in data_keys:
            data_keys.remove('now')
            data__now = data['now']
            validate___definitions_moment(data__now, custom_formats, (name_prefix or 'data') + '.now')
        if 'machine' in data_keys:
            data_keys.remove('machine')
            data__machine = data['machine']
            validate___definitions_entry_id(data__machine, custom_formats, (name_prefix or 'data') + '.machine')
        if 'days' in data_keys:
            data_keys.remove('days')
            data__days = data['days']
            if not isinstance(data__days, int) and (not (isinstance(data__days, float) and data__days.is_integer())) or isinstance(data__days, bool):
                raise JsonSchemaValueException('type', value=data__days, name='' + (name_prefix or 'data') + '.days', definition={'type': 'integer'}, rule='type')
            if isinstance(data__days, (int, float, Decimal)) and (not isinstance(data__days, bool)):
                if data__days < 1:
                    raise JsonSchemaValueException('minimum', value=data__days, name='' + (name_prefix or 'data') + '.days', definition={'minimum': 1}, rule='minimum')
                if data__days > 36500:
                    raise JsonSchemaValueException('maximum', value=data__days, name='' + (name_prefix or 'data') + '.days', definition={'maximum': 36500}, rule='maximum')
        if 'limits' in data_keys:
            data_keys.remove('limits')
            data__limits = data['limits']
            validate___definitions_look_limits(data__limits, custom_formats, (name_prefix or 'data') + '.limits')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_recheck_body(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['check', 'machine', 'pours', 'poured_at', 'reading', 'now']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['check', 'machine', 'pours', 'poured_at', 'reading', 'now']}, rule='required')
        data_keys = set(data.keys())
        if 'check' in data_keys:
            data_keys.remove('check')
            data__check = data['check']
            validate___definitions_plan_check_body(data__check, custom_formats, (name_prefix or 'data') + '.check')
        if 'machine' in data_keys:
            data_keys.remove('machine')
            data__machine = data['machine']
            validate___definitions_machine_typed(data__machine, custom_formats, (name_prefix or 'data') + '.machine')
        if 'pours' in data_keys:
            data_keys.remove('pours')
            data__pours = data['pours']
            validate___definitions_bucket_rows(data__pours, custom_formats, (name_prefix or 'data') + '.pours')
        if 'draw_off' in data_keys:
            data_keys.remove('draw_off')
            data__drawoff = data['draw_off']
            validate___definitions_typed(data__drawoff, custom_formats, (name_prefix or 'data') + '.draw_off')
        if 'poured_at' in data_keys:
            data_keys.remove('poured_at')
            data__pouredat = data['poured_at']
            validate___definitions_moment(data__pouredat, custom_formats, (name_prefix or 'data') + '.poured_at')
        if 'reading' in data_keys:
            data_keys.remove('reading')
            data__reading = data['reading']
            validate___definitions_reading_typed(data__reading, custom_formats, (name_prefix or 'data') + '.reading')
        if 'dip' in data_keys:
            data_keys.remove('dip')
            data__dip = data['dip']
            validate___definitions_dip_typed(data__dip, custom_formats, (name_prefix or 'data') + '.dip')
        if 'now' in data_keys:
            data_keys.remove('now')
            data__now = data['now']
            validate___definitions_moment(data__now, custom_formats, (name_prefix or 'data') + '.now')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_read_water_body(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['water']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['water']}, rule='required')
        data_keys = set(data.keys())
        if 'water' in data_keys:
            data_keys.remove('water')
            data__water = data['water']
            validate___definitions_water_typed(data__water, custom_formats, (name_prefix or 'data') + '.water')
        if 'limits' in data_keys:
            data_keys.remove('limits')
            data__limits = data['limits']
            validate___definitions_water_limits_typed(data__limits, custom_formats, (name_prefix or 'data') + '.limits')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_read_quantity_body(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['text', 'quantity']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['text', 'quantity']}, rule='required')
        data_keys = set(data.keys())
        if 'text' in data_keys:
            data_keys.remove('text')
            data__text = data['text']
            if not isinstance(data__text, str):
                raise JsonSchemaValueException('type', value=data__text, name='' + (name_prefix or 'data') + '.text', definition={'type': 'string'}, rule='type')
            if isinstance(data__text, str):
                data__text_len = len(data__text)
                if data__text_len > 40:
                    raise JsonSchemaValueException('maxLength', value=data__text, name='' + (name_prefix or 'data') + '.text', definition={'maxLength': 40}, rule='maxLength')
        if 'quantity' in data_keys:
            data_keys.remove('quantity')
            data__quantity = data['quantity']
            if not isinstance(data__quantity, str):
                raise JsonSchemaValueException('type', value=data__quantity, name='' + (name_prefix or 'data') + '.quantity', definition={'type': 'string'}, rule='type')
            if isinstance(data__quantity, str):
                data__quantity_len = len(data__quantity)
                if data__quantity_len > 40:
                    raise JsonSchemaValueException('maxLength', value=data__quantity, name='' + (name_prefix or 'data') + '.quantity', definition={'maxLength': 40}, rule='maxLength')
        if 'unit' in data_keys:
            data_keys.remove('unit')
            data__unit = data['unit']
            validate___definitions_unit(data__unit, custom_formats, (name_prefix or 'data') + '.unit')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_read_machine_body(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['machine']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['machine']}, rule='required')
        data_keys = set(data.keys())
        if 'machine' in data_keys:
            data_keys.remove('machine')
            data__machine = data['machine']
            validate___definitions_machine_typed(data__machine, custom_formats, (name_prefix or 'data') + '.machine')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_read_fluid_body(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['fluid', 'today']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['fluid', 'today']}, rule='required')
        data_keys = set(data.keys())
        if 'fluid' in data_keys:
            data_keys.remove('fluid')
            data__fluid = data['fluid']
            validate___definitions_fluid_typed(data__fluid, custom_formats, (name_prefix or 'data') + '.fluid')
        if 'instrument' in data_keys:
            data_keys.remove('instrument')
            data__instrument = data['instrument']
            validate___definitions_instrument_typed(data__instrument, custom_formats, (name_prefix or 'data') + '.instrument')
        if 'last_factor' in data_keys:
            data_keys.remove('last_factor')
            data__lastfactor = data['last_factor']
            validate___definitions_typed(data__lastfactor, custom_formats, (name_prefix or 'data') + '.last_factor')
        if 'today' in data_keys:
            data_keys.remove('today')
            data__today = data['today']
            if not isinstance(data__today, str):
                raise JsonSchemaValueException('type', value=data__today, name='' + (name_prefix or 'data') + '.today', definition={'type': 'string'}, rule='type')
            if isinstance(data__today, str):
                data__today_len = len(data__today)
                if data__today_len > 40:
                    raise JsonSchemaValueException('maxLength', value=data__today, name='' + (name_prefix or 'data') + '.today', definition={'maxLength': 40}, rule='maxLength')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_read_export_body(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['text', 'lines']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['text', 'lines']}, rule='required')
        data_keys = set(data.keys())
        if 'text' in data_keys:
            data_keys.remove('text')
            data__text = data['text']
            if not isinstance(data__text, str):
                raise JsonSchemaValueException('type', value=data__text, name='' + (name_prefix or 'data') + '.text', definition={'type': 'string'}, rule='type')
        if 'lines' in data_keys:
            data_keys.remove('lines')
            data__lines = data['lines']
            if not isinstance(data__lines, (list, tuple)):
                raise JsonSchemaValueException('type', value=data__lines, name='' + (name_prefix or 'data') + '.lines', definition={'type': 'array'}, rule='type')
            data__lines_is_list = isinstance(data__lines, (list, tuple))
            if data__lines_is_list:
                data__lines_len = len(data__lines)
                if data__lines_len > 50000:
                    raise JsonSchemaValueException('maxItems', value=data__lines, name='' + (name_prefix or 'data') + '.lines', definition={'maxItems': 50000}, rule='maxItems')
                for data__lines_x, data__lines_item in enumerate(data__lines):
                    if not isinstance(data__lines_item, str):
                        raise JsonSchemaValueException('type', value=data__lines_item, name='' + (name_prefix or 'data') + '.lines[{data__lines_x}]'.format(**locals()) + '', definition={'type': 'string'}, rule='type')
        if 'heads' in data_keys:
            data_keys.remove('heads')
            data__heads = data['heads']
            if not isinstance(data__heads, (list, tuple)):
                raise JsonSchemaValueException('type', value=data__heads, name='' + (name_prefix or 'data') + '.heads', definition={'type': 'array'}, rule='type')
            data__heads_is_list = isinstance(data__heads, (list, tuple))
            if data__heads_is_list:
                data__heads_len = len(data__heads)
                if data__heads_len > 1000:
                    raise JsonSchemaValueException('maxItems', value=data__heads, name='' + (name_prefix or 'data') + '.heads', definition={'maxItems': 1000}, rule='maxItems')
                for data__heads_x, data__heads_item in enumerate(data__heads):
                    validate___definitions_log_head(data__heads_item, custom_formats, (name_prefix or 'data') + '.heads[{data__heads_x}]'.format(**locals()))
        if 'now' in data_keys:
            data_keys.remove('now')
            data__now = data['now']
            validate___definitions_moment(data__now, custom_formats, (name_prefix or 'data') + '.now')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_read_code_body(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['text']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['text']}, rule='required')
        data_keys = set(data.keys())
        if 'text' in data_keys:
            data_keys.remove('text')
            data__text = data['text']
            if not isinstance(data__text, str):
                raise JsonSchemaValueException('type', value=data__text, name='' + (name_prefix or 'data') + '.text', definition={'type': 'string'}, rule='type')
            if isinstance(data__text, str):
                data__text_len = len(data__text)
                if data__text_len > 40:
                    raise JsonSchemaValueException('maxLength', value=data__text, name='' + (name_prefix or 'data') + '.text', definition={'maxLength': 40}, rule='maxLength')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_plan_recipe_body(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['sump', 'fill_to_l', 'target', 'mixing', 'bucket', 'draw_off']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['sump', 'fill_to_l', 'target', 'mixing', 'bucket', 'draw_off']}, rule='required')
        data_keys = set(data.keys())
        if 'sump' in data_keys:
            data_keys.remove('sump')
            data__sump = data['sump']
            if not isinstance(data__sump, dict):
                raise JsonSchemaValueException('type', value=data__sump, name='' + (name_prefix or 'data') + '.sump', definition={'type': 'object'}, rule='type')
            data__sump_is_dict = isinstance(data__sump, dict)
            if data__sump_is_dict:
                data__sump__missing_keys = set(['volume_l', 'strength_pct']) - data__sump.keys()
                if data__sump__missing_keys:
                    raise JsonSchemaValueException('required', value=data__sump, name='' + (name_prefix or 'data') + '.sump', definition={'required': ['volume_l', 'strength_pct']}, rule='required')
                data__sump_keys = set(data__sump.keys())
                if 'volume_l' in data__sump_keys:
                    data__sump_keys.remove('volume_l')
                    data__sump__volumel = data__sump['volume_l']
                    if not isinstance(data__sump__volumel, dict):
                        raise JsonSchemaValueException('type', value=data__sump__volumel, name='' + (name_prefix or 'data') + '.sump.volume_l', definition={'type': 'object'}, rule='type')
                    data__sump__volumel_is_dict = isinstance(data__sump__volumel, dict)
                    if data__sump__volumel_is_dict:
                        data__sump__volumel__missing_keys = set(['value', 'u']) - data__sump__volumel.keys()
                        if data__sump__volumel__missing_keys:
                            raise JsonSchemaValueException('required', value=data__sump__volumel, name='' + (name_prefix or 'data') + '.sump.volume_l', definition={'required': ['value', 'u']}, rule='required')
                        data__sump__volumel_keys = set(data__sump__volumel.keys())
                        if 'value' in data__sump__volumel_keys:
                            data__sump__volumel_keys.remove('value')
                            data__sump__volumel__value = data__sump__volumel['value']
                            if not isinstance(data__sump__volumel__value, (int, float, Decimal)) or isinstance(data__sump__volumel__value, bool):
                                raise JsonSchemaValueException('type', value=data__sump__volumel__value, name='' + (name_prefix or 'data') + '.sump.volume_l.value', definition={'type': 'number'}, rule='type')
                            if isinstance(data__sump__volumel__value, (int, float, Decimal)) and (not isinstance(data__sump__volumel__value, bool)):
                                if data__sump__volumel__value < 0:
                                    raise JsonSchemaValueException('minimum', value=data__sump__volumel__value, name='' + (name_prefix or 'data') + '.sump.volume_l.value', definition={'minimum': 0}, rule='minimum')
                                if data__sump__volumel__value > 200000:
                                    raise JsonSchemaValueException('maximum', value=data__sump__volumel__value, name='' + (name_prefix or 'data') + '.sump.volume_l.value', definition={'maximum': 200000}, rule='maximum')
                        if 'u' in data__sump__volumel_keys:
                            data__sump__volumel_keys.remove('u')
                            data__sump__volumel__u = data__sump__volumel['u']
                            if not isinstance(data__sump__volumel__u, (int, float, Decimal)) or isinstance(data__sump__volumel__u, bool):
                                raise JsonSchemaValueException('type', value=data__sump__volumel__u, name='' + (name_prefix or 'data') + '.sump.volume_l.u', definition={'type': 'number'}, rule='type')
                            if isinstance(data__sump__volumel__u, (int, float, Decimal)) and (not isinstance(data__sump__volumel__u, bool)):
                                if data__sump__volumel__u < 0:
                                    raise JsonSchemaValueException('minimum', value=data__sump__volumel__u, name='' + (name_prefix or 'data') + '.sump.volume_l.u', definition={'minimum': 0}, rule='minimum')
                                if data__sump__volumel__u > 200000:
                                    raise JsonSchemaValueException('maximum', value=data__sump__volumel__u, name='' + (name_prefix or 'data') + '.sump.volume_l.u', definition={'maximum': 200000}, rule='maximum')
                        if data__sump__volumel_keys:
                            raise JsonSchemaValueException('' + (name_prefix or 'data') + '.sump.volume_l must not contain ' + str(data__sump__volumel_keys) + ' properties', value=data__sump__volumel, name='' + (name_prefix or 'data') + '.sump.volume_l', definition={'additionalProperties': False}, rule='additionalProperties')
                if 'strength_pct' in data__sump_keys:
                    data__sump_keys.remove('strength_pct')
                    data__sump__strengthpct = data__sump['strength_pct']
                    if not isinstance(data__sump__strengthpct, dict):
                        raise JsonSchemaValueException('type', value=data__sump__strengthpct, name='' + (name_prefix or 'data') + '.sump.strength_pct', definition={'type': 'object'}, rule='type')
                    data__sump__strengthpct_is_dict = isinstance(data__sump__strengthpct, dict)
                    if data__sump__strengthpct_is_dict:
                        data__sump__strengthpct__missing_keys = set(['value', 'u']) - data__sump__strengthpct.keys()
                        if data__sump__strengthpct__missing_keys:
                            raise JsonSchemaValueException('required', value=data__sump__strengthpct, name='' + (name_prefix or 'data') + '.sump.strength_pct', definition={'required': ['value', 'u']}, rule='required')
                        data__sump__strengthpct_keys = set(data__sump__strengthpct.keys())
                        if 'value' in data__sump__strengthpct_keys:
                            data__sump__strengthpct_keys.remove('value')
                            data__sump__strengthpct__value = data__sump__strengthpct['value']
                            if not isinstance(data__sump__strengthpct__value, (int, float, Decimal)) or isinstance(data__sump__strengthpct__value, bool):
                                raise JsonSchemaValueException('type', value=data__sump__strengthpct__value, name='' + (name_prefix or 'data') + '.sump.strength_pct.value', definition={'type': 'number'}, rule='type')
                            if isinstance(data__sump__strengthpct__value, (int, float, Decimal)) and (not isinstance(data__sump__strengthpct__value, bool)):
                                if data__sump__strengthpct__value < 0:
                                    raise JsonSchemaValueException('minimum', value=data__sump__strengthpct__value, name='' + (name_prefix or 'data') + '.sump.strength_pct.value', definition={'minimum': 0}, rule='minimum')
                                if data__sump__strengthpct__value >= 40:
                                    raise JsonSchemaValueException('exclusiveMaximum', value=data__sump__strengthpct__value, name='' + (name_prefix or 'data') + '.sump.strength_pct.value', definition={'exclusiveMaximum': 40}, rule='exclusiveMaximum')
                        if 'u' in data__sump__strengthpct_keys:
                            data__sump__strengthpct_keys.remove('u')
                            data__sump__strengthpct__u = data__sump__strengthpct['u']
                            if not isinstance(data__sump__strengthpct__u, (int, float, Decimal)) or isinstance(data__sump__strengthpct__u, bool):
                                raise JsonSchemaValueException('type', value=data__sump__strengthpct__u, name='' + (name_prefix or 'data') + '.sump.strength_pct.u', definition={'type': 'number'}, rule='type')
                            if isinstance(data__sump__strengthpct__u, (int, float, Decimal)) and (not isinstance(data__sump__strengthpct__u, bool)):
                                if data__sump__strengthpct__u < 0:
                                    raise JsonSchemaValueException('minimum', value=data__sump__strengthpct__u, name='' + (name_prefix or 'data') + '.sump.strength_pct.u', definition={'minimum': 0}, rule='minimum')
                                if data__sump__strengthpct__u > 100:
                                    raise JsonSchemaValueException('maximum', value=data__sump__strengthpct__u, name='' + (name_prefix or 'data') + '.sump.strength_pct.u', definition={'maximum': 100}, rule='maximum')
                        if data__sump__strengthpct_keys:
                            raise JsonSchemaValueException('' + (name_prefix or 'data') + '.sump.strength_pct must not contain ' + str(data__sump__strengthpct_keys) + ' properties', value=data__sump__strengthpct, name='' + (name_prefix or 'data') + '.sump.strength_pct', definition={'additionalProperties': False}, rule='additionalProperties')
                if data__sump_keys:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.sump must not contain ' + str(data__sump_keys) + ' properties', value=data__sump, name='' + (name_prefix or 'data') + '.sump', definition={'additionalProperties': False}, rule='additionalProperties')
        if 'fill_to_l' in data_keys:
            data_keys.remove('fill_to_l')
            data__filltol = data['fill_to_l']
            if not isinstance(data__filltol, (int, float, Decimal)) or isinstance(data__filltol, bool):
                raise JsonSchemaValueException('type', value=data__filltol, name='' + (name_prefix or 'data') + '.fill_to_l', definition={'type': 'number'}, rule='type')
            if isinstance(data__filltol, (int, float, Decimal)) and (not isinstance(data__filltol, bool)):
                if data__filltol > 200000:
                    raise JsonSchemaValueException('maximum', value=data__filltol, name='' + (name_prefix or 'data') + '.fill_to_l', definition={'maximum': 200000}, rule='maximum')
                if data__filltol <= 0:
                    raise JsonSchemaValueException('exclusiveMinimum', value=data__filltol, name='' + (name_prefix or 'data') + '.fill_to_l', definition={'exclusiveMinimum': 0}, rule='exclusiveMinimum')
        if 'target' in data_keys:
            data_keys.remove('target')
            data__target = data['target']
            validate___definitions_plan_target(data__target, custom_formats, (name_prefix or 'data') + '.target')
        if 'mixing' in data_keys:
            data_keys.remove('mixing')
            data__mixing = data['mixing']
            validate___definitions_plan_mixing(data__mixing, custom_formats, (name_prefix or 'data') + '.mixing')
        if 'bucket' in data_keys:
            data_keys.remove('bucket')
            data__bucket = data['bucket']
            validate___definitions_plan_bucket(data__bucket, custom_formats, (name_prefix or 'data') + '.bucket')
        if 'draw_off' in data_keys:
            data_keys.remove('draw_off')
            data__drawoff = data['draw_off']
            if not isinstance(data__drawoff, dict):
                raise JsonSchemaValueException('type', value=data__drawoff, name='' + (name_prefix or 'data') + '.draw_off', definition={'type': 'object'}, rule='type')
            data__drawoff_is_dict = isinstance(data__drawoff, dict)
            if data__drawoff_is_dict:
                data__drawoff__missing_keys = set(['allowed', 'mark_l']) - data__drawoff.keys()
                if data__drawoff__missing_keys:
                    raise JsonSchemaValueException('required', value=data__drawoff, name='' + (name_prefix or 'data') + '.draw_off', definition={'required': ['allowed', 'mark_l']}, rule='required')
                data__drawoff_keys = set(data__drawoff.keys())
                if 'allowed' in data__drawoff_keys:
                    data__drawoff_keys.remove('allowed')
                    data__drawoff__allowed = data__drawoff['allowed']
                    if not isinstance(data__drawoff__allowed, bool):
                        raise JsonSchemaValueException('type', value=data__drawoff__allowed, name='' + (name_prefix or 'data') + '.draw_off.allowed', definition={'type': 'boolean'}, rule='type')
                if 'mark_l' in data__drawoff_keys:
                    data__drawoff_keys.remove('mark_l')
                    data__drawoff__markl = data__drawoff['mark_l']
                    if not isinstance(data__drawoff__markl, (int, float, Decimal)) or isinstance(data__drawoff__markl, bool):
                        raise JsonSchemaValueException('type', value=data__drawoff__markl, name='' + (name_prefix or 'data') + '.draw_off.mark_l', definition={'type': 'number'}, rule='type')
                    if isinstance(data__drawoff__markl, (int, float, Decimal)) and (not isinstance(data__drawoff__markl, bool)):
                        if data__drawoff__markl < 0.001:
                            raise JsonSchemaValueException('minimum', value=data__drawoff__markl, name='' + (name_prefix or 'data') + '.draw_off.mark_l', definition={'minimum': 0.001}, rule='minimum')
                        if data__drawoff__markl > 1000:
                            raise JsonSchemaValueException('maximum', value=data__drawoff__markl, name='' + (name_prefix or 'data') + '.draw_off.mark_l', definition={'maximum': 1000}, rule='maximum')
                if 'most_l' in data__drawoff_keys:
                    data__drawoff_keys.remove('most_l')
                    data__drawoff__mostl = data__drawoff['most_l']
                    if not isinstance(data__drawoff__mostl, (int, float, Decimal)) or isinstance(data__drawoff__mostl, bool):
                        raise JsonSchemaValueException('type', value=data__drawoff__mostl, name='' + (name_prefix or 'data') + '.draw_off.most_l', definition={'type': 'number'}, rule='type')
                    if isinstance(data__drawoff__mostl, (int, float, Decimal)) and (not isinstance(data__drawoff__mostl, bool)):
                        if data__drawoff__mostl < 0:
                            raise JsonSchemaValueException('minimum', value=data__drawoff__mostl, name='' + (name_prefix or 'data') + '.draw_off.most_l', definition={'minimum': 0}, rule='minimum')
                        if data__drawoff__mostl > 200000:
                            raise JsonSchemaValueException('maximum', value=data__drawoff__mostl, name='' + (name_prefix or 'data') + '.draw_off.most_l', definition={'maximum': 200000}, rule='maximum')
                if data__drawoff_keys:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.draw_off must not contain ' + str(data__drawoff_keys) + ' properties', value=data__drawoff, name='' + (name_prefix or 'data') + '.draw_off', definition={'additionalProperties': False}, rule='additionalProperties')
        if 'never_above_l' in data_keys:
            data_keys.remove('never_above_l')
            data__neverabovel = data['never_above_l']
            if not isinstance(data__neverabovel, (int, float, Decimal)) or isinstance(data__neverabovel, bool):
                raise JsonSchemaValueException('type', value=data__neverabovel, name='' + (name_prefix or 'data') + '.never_above_l', definition={'type': 'number'}, rule='type')
            if isinstance(data__neverabovel, (int, float, Decimal)) and (not isinstance(data__neverabovel, bool)):
                if data__neverabovel > 200000:
                    raise JsonSchemaValueException('maximum', value=data__neverabovel, name='' + (name_prefix or 'data') + '.never_above_l', definition={'maximum': 200000}, rule='maximum')
                if data__neverabovel <= 0:
                    raise JsonSchemaValueException('exclusiveMinimum', value=data__neverabovel, name='' + (name_prefix or 'data') + '.never_above_l', definition={'exclusiveMinimum': 0}, rule='exclusiveMinimum')
        if 'hidden' in data_keys:
            data_keys.remove('hidden')
            data__hidden = data['hidden']
            if not isinstance(data__hidden, dict):
                raise JsonSchemaValueException('type', value=data__hidden, name='' + (name_prefix or 'data') + '.hidden', definition={'type': 'object'}, rule='type')
            data__hidden_is_dict = isinstance(data__hidden, dict)
            if data__hidden_is_dict:
                data__hidden__missing_keys = set(['volume_l']) - data__hidden.keys()
                if data__hidden__missing_keys:
                    raise JsonSchemaValueException('required', value=data__hidden, name='' + (name_prefix or 'data') + '.hidden', definition={'required': ['volume_l']}, rule='required')
                data__hidden_keys = set(data__hidden.keys())
                if 'volume_l' in data__hidden_keys:
                    data__hidden_keys.remove('volume_l')
                    data__hidden__volumel = data__hidden['volume_l']
                    if not isinstance(data__hidden__volumel, dict):
                        raise JsonSchemaValueException('type', value=data__hidden__volumel, name='' + (name_prefix or 'data') + '.hidden.volume_l', definition={'type': 'object'}, rule='type')
                    data__hidden__volumel_is_dict = isinstance(data__hidden__volumel, dict)
                    if data__hidden__volumel_is_dict:
                        data__hidden__volumel__missing_keys = set(['value', 'u']) - data__hidden__volumel.keys()
                        if data__hidden__volumel__missing_keys:
                            raise JsonSchemaValueException('required', value=data__hidden__volumel, name='' + (name_prefix or 'data') + '.hidden.volume_l', definition={'required': ['value', 'u']}, rule='required')
                        data__hidden__volumel_keys = set(data__hidden__volumel.keys())
                        if 'value' in data__hidden__volumel_keys:
                            data__hidden__volumel_keys.remove('value')
                            data__hidden__volumel__value = data__hidden__volumel['value']
                            if not isinstance(data__hidden__volumel__value, (int, float, Decimal)) or isinstance(data__hidden__volumel__value, bool):
                                raise JsonSchemaValueException('type', value=data__hidden__volumel__value, name='' + (name_prefix or 'data') + '.hidden.volume_l.value', definition={'type': 'number'}, rule='type')
                            if isinstance(data__hidden__volumel__value, (int, float, Decimal)) and (not isinstance(data__hidden__volumel__value, bool)):
                                if data__hidden__volumel__value < 0:
                                    raise JsonSchemaValueException('minimum', value=data__hidden__volumel__value, name='' + (name_prefix or 'data') + '.hidden.volume_l.value', definition={'minimum': 0}, rule='minimum')
                                if data__hidden__volumel__value > 200000:
                                    raise JsonSchemaValueException('maximum', value=data__hidden__volumel__value, name='' + (name_prefix or 'data') + '.hidden.volume_l.value', definition={'maximum': 200000}, rule='maximum')
                        if 'u' in data__hidden__volumel_keys:
                            data__hidden__volumel_keys.remove('u')
                            data__hidden__volumel__u = data__hidden__volumel['u']
                            if not isinstance(data__hidden__volumel__u, (int, float, Decimal)) or isinstance(data__hidden__volumel__u, bool):
                                raise JsonSchemaValueException('type', value=data__hidden__volumel__u, name='' + (name_prefix or 'data') + '.hidden.volume_l.u', definition={'type': 'number'}, rule='type')
                            if isinstance(data__hidden__volumel__u, (int, float, Decimal)) and (not isinstance(data__hidden__volumel__u, bool)):
                                if data__hidden__volumel__u < 0:
                                    raise JsonSchemaValueException('minimum', value=data__hidden__volumel__u, name='' + (name_prefix or 'data') + '.hidden.volume_l.u', definition={'minimum': 0}, rule='minimum')
                                if data__hidden__volumel__u > 200000:
                                    raise JsonSchemaValueException('maximum', value=data__hidden__volumel__u, name='' + (name_prefix or 'data') + '.hidden.volume_l.u', definition={'maximum': 200000}, rule='maximum')
                        if data__hidden__volumel_keys:
                            raise JsonSchemaValueException('' + (name_prefix or 'data') + '.hidden.volume_l must not contain ' + str(data__hidden__volumel_keys) + ' properties', value=data__hidden__volumel, name='' + (name_prefix or 'data') + '.hidden.volume_l', definition={'additionalProperties': False}, rule='additionalProperties')
                if 'strength_pct' in data__hidden_keys:
                    data__hidden_keys.remove('strength_pct')
                    data__hidden__strengthpct = data__hidden['strength_pct']
                    if not isinstance(data__hidden__strengthpct, dict):
                        raise JsonSchemaValueException('type', value=data__hidden__strengthpct, name='' + (name_prefix or 'data') + '.hidden.strength_pct', definition={'type': 'object'}, rule='type')
                    data__hidden__strengthpct_is_dict = isinstance(data__hidden__strengthpct, dict)
                    if data__hidden__strengthpct_is_dict:
                        data__hidden__strengthpct__missing_keys = set(['value', 'u']) - data__hidden__strengthpct.keys()
                        if data__hidden__strengthpct__missing_keys:
                            raise JsonSchemaValueException('required', value=data__hidden__strengthpct, name='' + (name_prefix or 'data') + '.hidden.strength_pct', definition={'required': ['value', 'u']}, rule='required')
                        data__hidden__strengthpct_keys = set(data__hidden__strengthpct.keys())
                        if 'value' in data__hidden__strengthpct_keys:
                            data__hidden__strengthpct_keys.remove('value')
                            data__hidden__strengthpct__value = data__hidden__strengthpct['value']
                            if not isinstance(data__hidden__strengthpct__value, (int, float, Decimal)) or isinstance(data__hidden__strengthpct__value, bool):
                                raise JsonSchemaValueException('type', value=data__hidden__strengthpct__value, name='' + (name_prefix or 'data') + '.hidden.strength_pct.value', definition={'type': 'number'}, rule='type')
                            if isinstance(data__hidden__strengthpct__value, (int, float, Decimal)) and (not isinstance(data__hidden__strengthpct__value, bool)):
                                if data__hidden__strengthpct__value < 0:
                                    raise JsonSchemaValueException('minimum', value=data__hidden__strengthpct__value, name='' + (name_prefix or 'data') + '.hidden.strength_pct.value', definition={'minimum': 0}, rule='minimum')
                                if data__hidden__strengthpct__value >= 40:
                                    raise JsonSchemaValueException('exclusiveMaximum', value=data__hidden__strengthpct__value, name='' + (name_prefix or 'data') + '.hidden.strength_pct.value', definition={'exclusiveMaximum': 40}, rule='exclusiveMaximum')
                        if 'u' in data__hidden__strengthpct_keys:
                            data__hidden__strengthpct_keys.remove('u')
                            data__hidden__strengthpct__u = data__hidden__strengthpct['u']
                            if not isinstance(data__hidden__strengthpct__u, (int, float, Decimal)) or isinstance(data__hidden__strengthpct__u, bool):
                                raise JsonSchemaValueException('type', value=data__hidden__strengthpct__u, name='' + (name_prefix or 'data') + '.hidden.strength_pct.u', definition={'type': 'number'}, rule='type')
                            if isinstance(data__hidden__strengthpct__u, (int, float, Decimal)) and (not isinstance(data__hidden__strengthpct__u, bool)):
                                if data__hidden__strengthpct__u < 0:
                                    raise JsonSchemaValueException('minimum', value=data__hidden__strengthpct__u, name='' + (name_prefix or 'data') + '.hidden.strength_pct.u', definition={'minimum': 0}, rule='minimum')
                                if data__hidden__strengthpct__u > 100:
                                    raise JsonSchemaValueException('maximum', value=data__hidden__strengthpct__u, name='' + (name_prefix or 'data') + '.hidden.strength_pct.u', definition={'maximum': 100}, rule='maximum')
                        if data__hidden__strengthpct_keys:
                            raise JsonSchemaValueException('' + (name_prefix or 'data') + '.hidden.strength_pct must not contain ' + str(data__hidden__strengthpct_keys) + ' properties', value=data__hidden__strengthpct, name='' + (name_prefix or 'data') + '.hidden.strength_pct', definition={'additionalProperties': False}, rule='additionalProperties')
                if data__hidden_keys:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.hidden must not contain ' + str(data__hidden_keys) + ' properties', value=data__hidden, name='' + (name_prefix or 'data') + '.hidden', definition={'additionalProperties': False}, rule='additionalProperties')
        if 'pail' in data_keys:
            data_keys.remove('pail')
            data__pail = data['pail']
            validate___definitions_plan_pail(data__pail, custom_formats, (name_prefix or 'data') + '.pail')
        if 'effort' in data_keys:
            data_keys.remove('effort')
            data__effort = data['effort']
            if not isinstance(data__effort, dict):
                raise JsonSchemaValueException('type', value=data__effort, name='' + (name_prefix or 'data') + '.effort', definition={'type': 'object'}, rule='type')
            data__effort_is_dict = isinstance(data__effort, dict)
            if data__effort_is_dict:
                data__effort__missing_keys = set([]) - data__effort.keys()
                if data__effort__missing_keys:
                    raise JsonSchemaValueException('required', value=data__effort, name='' + (name_prefix or 'data') + '.effort', definition={'required': []}, rule='required')
                data__effort_keys = set(data__effort.keys())
                if 'most_buckets' in data__effort_keys:
                    data__effort_keys.remove('most_buckets')
                    data__effort__mostbuckets = data__effort['most_buckets']
                    if not isinstance(data__effort__mostbuckets, int) and (not (isinstance(data__effort__mostbuckets, float) and data__effort__mostbuckets.is_integer())) or isinstance(data__effort__mostbuckets, bool):
                        raise JsonSchemaValueException('type', value=data__effort__mostbuckets, name='' + (name_prefix or 'data') + '.effort.most_buckets', definition={'type': 'integer'}, rule='type')
                    if isinstance(data__effort__mostbuckets, (int, float, Decimal)) and (not isinstance(data__effort__mostbuckets, bool)):
                        if data__effort__mostbuckets < 1:
                            raise JsonSchemaValueException('minimum', value=data__effort__mostbuckets, name='' + (name_prefix or 'data') + '.effort.most_buckets', definition={'minimum': 1}, rule='minimum')
                        if data__effort__mostbuckets > 10000:
                            raise JsonSchemaValueException('maximum', value=data__effort__mostbuckets, name='' + (name_prefix or 'data') + '.effort.most_buckets', definition={'maximum': 10000}, rule='maximum')
                if 'heaviest_kg' in data__effort_keys:
                    data__effort_keys.remove('heaviest_kg')
                    data__effort__heaviestkg = data__effort['heaviest_kg']
                    if not isinstance(data__effort__heaviestkg, (int, float, Decimal)) or isinstance(data__effort__heaviestkg, bool):
                        raise JsonSchemaValueException('type', value=data__effort__heaviestkg, name='' + (name_prefix or 'data') + '.effort.heaviest_kg', definition={'type': 'number'}, rule='type')
                    if isinstance(data__effort__heaviestkg, (int, float, Decimal)) and (not isinstance(data__effort__heaviestkg, bool)):
                        if data__effort__heaviestkg > 100:
                            raise JsonSchemaValueException('maximum', value=data__effort__heaviestkg, name='' + (name_prefix or 'data') + '.effort.heaviest_kg', definition={'maximum': 100}, rule='maximum')
                        if data__effort__heaviestkg <= 0:
                            raise JsonSchemaValueException('exclusiveMinimum', value=data__effort__heaviestkg, name='' + (name_prefix or 'data') + '.effort.heaviest_kg', definition={'exclusiveMinimum': 0}, rule='exclusiveMinimum')
                if data__effort_keys:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.effort must not contain ' + str(data__effort_keys) + ' properties', value=data__effort, name='' + (name_prefix or 'data') + '.effort', definition={'additionalProperties': False}, rule='additionalProperties')
        if 'unit' in data_keys:
            data_keys.remove('unit')
            data__unit = data['unit']
            if not isinstance(data__unit, dict):
                raise JsonSchemaValueException('type', value=data__unit, name='' + (name_prefix or 'data') + '.unit', definition={'type': 'object'}, rule='type')
            data__unit_is_dict = isinstance(data__unit, dict)
            if data__unit_is_dict:
                data__unit__missing_keys = set(['lowest_pct', 'highest_pct', 'step_pct']) - data__unit.keys()
                if data__unit__missing_keys:
                    raise JsonSchemaValueException('required', value=data__unit, name='' + (name_prefix or 'data') + '.unit', definition={'required': ['lowest_pct', 'highest_pct', 'step_pct']}, rule='required')
                data__unit_keys = set(data__unit.keys())
                if 'lowest_pct' in data__unit_keys:
                    data__unit_keys.remove('lowest_pct')
                    data__unit__lowestpct = data__unit['lowest_pct']
                    if not isinstance(data__unit__lowestpct, (int, float, Decimal)) or isinstance(data__unit__lowestpct, bool):
                        raise JsonSchemaValueException('type', value=data__unit__lowestpct, name='' + (name_prefix or 'data') + '.unit.lowest_pct', definition={'type': 'number'}, rule='type')
                    if isinstance(data__unit__lowestpct, (int, float, Decimal)) and (not isinstance(data__unit__lowestpct, bool)):
                        if data__unit__lowestpct < 0:
                            raise JsonSchemaValueException('minimum', value=data__unit__lowestpct, name='' + (name_prefix or 'data') + '.unit.lowest_pct', definition={'minimum': 0}, rule='minimum')
                        if data__unit__lowestpct > 100:
                            raise JsonSchemaValueException('maximum', value=data__unit__lowestpct, name='' + (name_prefix or 'data') + '.unit.lowest_pct', definition={'maximum': 100}, rule='maximum')
                if 'highest_pct' in data__unit_keys:
                    data__unit_keys.remove('highest_pct')
                    data__unit__highestpct = data__unit['highest_pct']
                    if not isinstance(data__unit__highestpct, (int, float, Decimal)) or isinstance(data__unit__highestpct, bool):
                        raise JsonSchemaValueException('type', value=data__unit__highestpct, name='' + (name_prefix or 'data') + '.unit.highest_pct', definition={'type': 'number'}, rule='type')
                    if isinstance(data__unit__highestpct, (int, float, Decimal)) and (not isinstance(data__unit__highestpct, bool)):
                        if data__unit__highestpct > 100:
                            raise JsonSchemaValueException('maximum', value=data__unit__highestpct, name='' + (name_prefix or 'data') + '.unit.highest_pct', definition={'maximum': 100}, rule='maximum')
                        if data__unit__highestpct <= 0:
                            raise JsonSchemaValueException('exclusiveMinimum', value=data__unit__highestpct, name='' + (name_prefix or 'data') + '.unit.highest_pct', definition={'exclusiveMinimum': 0}, rule='exclusiveMinimum')
                if 'step_pct' in data__unit_keys:
                    data__unit_keys.remove('step_pct')
                    data__unit__steppct = data__unit['step_pct']
                    if not isinstance(data__unit__steppct, (int, float, Decimal)) or isinstance(data__unit__steppct, bool):
                        raise JsonSchemaValueException('type', value=data__unit__steppct, name='' + (name_prefix or 'data') + '.unit.step_pct', definition={'type': 'number'}, rule='type')
                    if isinstance(data__unit__steppct, (int, float, Decimal)) and (not isinstance(data__unit__steppct, bool)):
                        if data__unit__steppct < 0.01:
                            raise JsonSchemaValueException('minimum', value=data__unit__steppct, name='' + (name_prefix or 'data') + '.unit.step_pct', definition={'minimum': 0.01}, rule='minimum')
                        if data__unit__steppct > 100:
                            raise JsonSchemaValueException('maximum', value=data__unit__steppct, name='' + (name_prefix or 'data') + '.unit.step_pct', definition={'maximum': 100}, rule='maximum')
                if data__unit_keys:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.unit must not contain ' + str(data__unit_keys) + ' properties', value=data__unit, name='' + (name_prefix or 'data') + '.unit', definition={'additionalProperties': False}, rule='additionalProperties')
        if 'stock' in data_keys:
            data_keys.remove('stock')
            data__stock = data['stock']
            if not isinstance(data__stock, dict):
                raise JsonSchemaValueException('type', value=data__stock, name='' + (name_prefix or 'data') + '.stock', definition={'type': 'object'}, rule='type')
            data__stock_is_dict = isinstance(data__stock, dict)
            if data__stock_is_dict:
                data__stock__missing_keys = set([]) - data__stock.keys()
                if data__stock__missing_keys:
                    raise JsonSchemaValueException('required', value=data__stock, name='' + (name_prefix or 'data') + '.stock', definition={'required': []}, rule='required')
                data__stock_keys = set(data__stock.keys())
                if 'concentrate_l' in data__stock_keys:
                    data__stock_keys.remove('concentrate_l')
                    data__stock__concentratel = data__stock['concentrate_l']
                    if not isinstance(data__stock__concentratel, (int, float, Decimal)) or isinstance(data__stock__concentratel, bool):
                        raise JsonSchemaValueException('type', value=data__stock__concentratel, name='' + (name_prefix or 'data') + '.stock.concentrate_l', definition={'type': 'number'}, rule='type')
                    if isinstance(data__stock__concentratel, (int, float, Decimal)) and (not isinstance(data__stock__concentratel, bool)):
                        if data__stock__concentratel < 0:
                            raise JsonSchemaValueException('minimum', value=data__stock__concentratel, name='' + (name_prefix or 'data') + '.stock.concentrate_l', definition={'minimum': 0}, rule='minimum')
                        if data__stock__concentratel > 200000:
                            raise JsonSchemaValueException('maximum', value=data__stock__concentratel, name='' + (name_prefix or 'data') + '.stock.concentrate_l', definition={'maximum': 200000}, rule='maximum')
                if 'water_l' in data__stock_keys:
                    data__stock_keys.remove('water_l')
                    data__stock__waterl = data__stock['water_l']
                    if not isinstance(data__stock__waterl, (int, float, Decimal)) or isinstance(data__stock__waterl, bool):
                        raise JsonSchemaValueException('type', value=data__stock__waterl, name='' + (name_prefix or 'data') + '.stock.water_l', definition={'type': 'number'}, rule='type')
                    if isinstance(data__stock__waterl, (int, float, Decimal)) and (not isinstance(data__stock__waterl, bool)):
                        if data__stock__waterl < 0:
                            raise JsonSchemaValueException('minimum', value=data__stock__waterl, name='' + (name_prefix or 'data') + '.stock.water_l', definition={'minimum': 0}, rule='minimum')
                        if data__stock__waterl > 200000:
                            raise JsonSchemaValueException('maximum', value=data__stock__waterl, name='' + (name_prefix or 'data') + '.stock.water_l', definition={'maximum': 200000}, rule='maximum')
                if 'ready_mixes' in data__stock_keys:
                    data__stock_keys.remove('ready_mixes')
                    data__stock__readymixes = data__stock['ready_mixes']
                    if not isinstance(data__stock__readymixes, (list, tuple)):
                        raise JsonSchemaValueException('type', value=data__stock__readymixes, name='' + (name_prefix or 'data') + '.stock.ready_mixes', definition={'type': 'array'}, rule='type')
                    data__stock__readymixes_is_list = isinstance(data__stock__readymixes, (list, tuple))
                    if data__stock__readymixes_is_list:
                        data__stock__readymixes_len = len(data__stock__readymixes)
                        if data__stock__readymixes_len > 20:
                            raise JsonSchemaValueException('maxItems', value=data__stock__readymixes, name='' + (name_prefix or 'data') + '.stock.ready_mixes', definition={'maxItems': 20}, rule='maxItems')
                        for data__stock__readymixes_x, data__stock__readymixes_item in enumerate(data__stock__readymixes):
                            if not isinstance(data__stock__readymixes_item, dict):
                                raise JsonSchemaValueException('type', value=data__stock__readymixes_item, name='' + (name_prefix or 'data') + '.stock.ready_mixes[{data__stock__readymixes_x}]'.format(**locals()) + '', definition={'type': 'object'}, rule='type')
                            data__stock__readymixes_item_is_dict = isinstance(data__stock__readymixes_item, dict)
                            if data__stock__readymixes_item_is_dict:
                                data__stock__readymixes_item__missing_keys = set(['strength_pct', 'volume_l']) - data__stock__readymixes_item.keys()
                                if data__stock__readymixes_item__missing_keys:
                                    raise JsonSchemaValueException('required', value=data__stock__readymixes_item, name='' + (name_prefix or 'data') + '.stock.ready_mixes[{data__stock__readymixes_x}]'.format(**locals()) + '', definition={'required': ['strength_pct', 'volume_l']}, rule='required')
                                data__stock__readymixes_item_keys = set(data__stock__readymixes_item.keys())
                                if 'strength_pct' in data__stock__readymixes_item_keys:
                                    data__stock__readymixes_item_keys.remove('strength_pct')
                                    data__stock__readymixes_item__strengthpct = data__stock__readymixes_item['strength_pct']
                                    if not isinstance(data__stock__readymixes_item__strengthpct, (int, float, Decimal)) or isinstance(data__stock__readymixes_item__strengthpct, bool):
                                        raise JsonSchemaValueException('type', value=data__stock__readymixes_item__strengthpct, name='' + (name_prefix or 'data') + '.stock.ready_mixes[{data__stock__readymixes_x}].strength_pct'.format(**locals()) + '', definition={'type': 'number'}, rule='type')
                                    if isinstance(data__stock__readymixes_item__strengthpct, (int, float, Decimal)) and (not isinstance(data__stock__readymixes_item__strengthpct, bool)):
                                        if data__stock__readymixes_item__strengthpct < 0:
                                            raise JsonSchemaValueException('minimum', value=data__stock__readymixes_item__strengthpct, name='' + (name_prefix or 'data') + '.stock.ready_mixes[{data__stock__readymixes_x}].strength_pct'.format(**locals()) + '', definition={'minimum': 0}, rule='minimum')
                                        if data__stock__readymixes_item__strengthpct > 100:
                                            raise JsonSchemaValueException('maximum', value=data__stock__readymixes_item__strengthpct, name='' + (name_prefix or 'data') + '.stock.ready_mixes[{data__stock__readymixes_x}].strength_pct'.format(**locals()) + '', definition={'maximum': 100}, rule='maximum')
                                if 'volume_l' in data__stock__readymixes_item_keys:
                                    data__stock__readymixes_item_keys.remove('volume_l')
                                    data__stock__readymixes_item__volumel = data__stock__readymixes_item['volume_l']
                                    if not isinstance(data__stock__readymixes_item__volumel, (int, float, Decimal)) or isinstance(data__stock__readymixes_item__volumel, bool):
                                        raise JsonSchemaValueException('type', value=data__stock__readymixes_item__volumel, name='' + (name_prefix or 'data') + '.stock.ready_mixes[{data__stock__readymixes_x}].volume_l'.format(**locals()) + '', definition={'type': 'number'}, rule='type')
                                    if isinstance(data__stock__readymixes_item__volumel, (int, float, Decimal)) and (not isinstance(data__stock__readymixes_item__volumel, bool)):
                                        if data__stock__readymixes_item__volumel < 0:
                                            raise JsonSchemaValueException('minimum', value=data__stock__readymixes_item__volumel, name='' + (name_prefix or 'data') + '.stock.ready_mixes[{data__stock__readymixes_x}].volume_l'.format(**locals()) + '', definition={'minimum': 0}, rule='minimum')
                                        if data__stock__readymixes_item__volumel > 200000:
                                            raise JsonSchemaValueException('maximum', value=data__stock__readymixes_item__volumel, name='' + (name_prefix or 'data') + '.stock.ready_mixes[{data__stock__readymixes_x}].volume_l'.format(**locals()) + '', definition={'maximum': 200000}, rule='maximum')
                                if data__stock__readymixes_item_keys:
                                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.stock.ready_mixes[{data__stock__readymixes_x}]'.format(**locals()) + ' must not contain ' + str(data__stock__readymixes_item_keys) + ' properties', value=data__stock__readymixes_item, name='' + (name_prefix or 'data') + '.stock.ready_mixes[{data__stock__readymixes_x}]'.format(**locals()) + '', definition={'additionalProperties': False}, rule='additionalProperties')
                if data__stock_keys:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.stock must not contain ' + str(data__stock_keys) + ' properties', value=data__stock, name='' + (name_prefix or 'data') + '.stock', definition={'additionalProperties': False}, rule='additionalProperties')
        if 'own_fluid' in data_keys:
            data_keys.remove('own_fluid')
            data__ownfluid = data['own_fluid']
            if not isinstance(data__ownfluid, dict):
                raise JsonSchemaValueException('type', value=data__ownfluid, name='' + (name_prefix or 'data') + '.own_fluid', definition={'type': 'object'}, rule='type')
            data__ownfluid_is_dict = isinstance(data__ownfluid, dict)
            if data__ownfluid_is_dict:
                data__ownfluid__missing_keys = set(['allowed']) - data__ownfluid.keys()
                if data__ownfluid__missing_keys:
                    raise JsonSchemaValueException('required', value=data__ownfluid, name='' + (name_prefix or 'data') + '.own_fluid', definition={'required': ['allowed']}, rule='required')
                data__ownfluid_keys = set(data__ownfluid.keys())
                if 'allowed' in data__ownfluid_keys:
                    data__ownfluid_keys.remove('allowed')
                    data__ownfluid__allowed = data__ownfluid['allowed']
                    if not isinstance(data__ownfluid__allowed, bool):
                        raise JsonSchemaValueException('type', value=data__ownfluid__allowed, name='' + (name_prefix or 'data') + '.own_fluid.allowed', definition={'type': 'boolean'}, rule='type')
                if data__ownfluid_keys:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.own_fluid must not contain ' + str(data__ownfluid_keys) + ' properties', value=data__ownfluid, name='' + (name_prefix or 'data') + '.own_fluid', definition={'additionalProperties': False}, rule='additionalProperties')
        if 'losses' in data_keys:
            data_keys.remove('losses')
            data__losses = data['losses']
            if not isinstance(data__losses, dict):
                raise JsonSchemaValueException('type', value=data__losses, name='' + (name_prefix or 'data') + '.losses', definition={'type': 'object'}, rule='type')
            data__losses_is_dict = isinstance(data__losses, dict)
            if data__losses_is_dict:
                data__losses__missing_keys = set(['carry_out_l_d']) - data__losses.keys()
                if data__losses__missing_keys:
                    raise JsonSchemaValueException('required', value=data__losses, name='' + (name_prefix or 'data') + '.losses', definition={'required': ['carry_out_l_d']}, rule='required')
                data__losses_keys = set(data__losses.keys())
                if 'carry_out_l_d' in data__losses_keys:
                    data__losses_keys.remove('carry_out_l_d')
                    data__losses__carryoutld = data__losses['carry_out_l_d']
                    if not isinstance(data__losses__carryoutld, (int, float, Decimal)) or isinstance(data__losses__carryoutld, bool):
                        raise JsonSchemaValueException('type', value=data__losses__carryoutld, name='' + (name_prefix or 'data') + '.losses.carry_out_l_d', definition={'type': 'number'}, rule='type')
                    if isinstance(data__losses__carryoutld, (int, float, Decimal)) and (not isinstance(data__losses__carryoutld, bool)):
                        if data__losses__carryoutld > 200000:
                            raise JsonSchemaValueException('maximum', value=data__losses__carryoutld, name='' + (name_prefix or 'data') + '.losses.carry_out_l_d', definition={'maximum': 200000}, rule='maximum')
                        if data__losses__carryoutld <= 0:
                            raise JsonSchemaValueException('exclusiveMinimum', value=data__losses__carryoutld, name='' + (name_prefix or 'data') + '.losses.carry_out_l_d', definition={'exclusiveMinimum': 0}, rule='exclusiveMinimum')
                if data__losses_keys:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.losses must not contain ' + str(data__losses_keys) + ' properties', value=data__losses, name='' + (name_prefix or 'data') + '.losses', definition={'additionalProperties': False}, rule='additionalProperties')
        if 'density_kg_l' in data_keys:
            data_keys.remove('density_kg_l')
            data__densitykgl = data['density_kg_l']
            if not isinstance(data__densitykgl, (int, float, Decimal)) or isinstance(data__densitykgl, bool):
                raise JsonSchemaValueException('type', value=data__densitykgl, name='' + (name_prefix or 'data') + '.density_kg_l', definition={'type': 'number'}, rule='type')
            if isinstance(data__densitykgl, (int, float, Decimal)) and (not isinstance(data__densitykgl, bool)):
                if data__densitykgl < 0.5:
                    raise JsonSchemaValueException('minimum', value=data__densitykgl, name='' + (name_prefix or 'data') + '.density_kg_l', definition={'minimum': 0.5}, rule='minimum')
                if data__densitykgl > 2:
                    raise JsonSchemaValueException('maximum', value=data__densitykgl, name='' + (name_prefix or 'data') + '.density_kg_l', definition={'maximum': 2}, rule='maximum')
        if 'mix_min' in data_keys:
            data_keys.remove('mix_min')
            data__mixmin = data['mix_min']
            if not isinstance(data__mixmin, int) and (not (isinstance(data__mixmin, float) and data__mixmin.is_integer())) or isinstance(data__mixmin, bool):
                raise JsonSchemaValueException('type', value=data__mixmin, name='' + (name_prefix or 'data') + '.mix_min', definition={'type': 'integer'}, rule='type')
            if isinstance(data__mixmin, (int, float, Decimal)) and (not isinstance(data__mixmin, bool)):
                if data__mixmin < 1:
                    raise JsonSchemaValueException('minimum', value=data__mixmin, name='' + (name_prefix or 'data') + '.mix_min', definition={'minimum': 1}, rule='minimum')
                if data__mixmin > 1440:
                    raise JsonSchemaValueException('maximum', value=data__mixmin, name='' + (name_prefix or 'data') + '.mix_min', definition={'maximum': 1440}, rule='maximum')
        if 'level_u_l' in data_keys:
            data_keys.remove('level_u_l')
            data__levelul = data['level_u_l']
            if not isinstance(data__levelul, (int, float, Decimal)) or isinstance(data__levelul, bool):
                raise JsonSchemaValueException('type', value=data__levelul, name='' + (name_prefix or 'data') + '.level_u_l', definition={'type': 'number'}, rule='type')
            if isinstance(data__levelul, (int, float, Decimal)) and (not isinstance(data__levelul, bool)):
                if data__levelul < 0:
                    raise JsonSchemaValueException('minimum', value=data__levelul, name='' + (name_prefix or 'data') + '.level_u_l', definition={'minimum': 0}, rule='minimum')
                if data__levelul > 200000:
                    raise JsonSchemaValueException('maximum', value=data__levelul, name='' + (name_prefix or 'data') + '.level_u_l', definition={'maximum': 200000}, rule='maximum')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_plan_pail(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set([]) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': []}, rule='required')
        data_keys = set(data.keys())
        if 'first_mark_l' in data_keys:
            data_keys.remove('first_mark_l')
            data__firstmarkl = data['first_mark_l']
            if not isinstance(data__firstmarkl, (int, float, Decimal)) or isinstance(data__firstmarkl, bool):
                raise JsonSchemaValueException('type', value=data__firstmarkl, name='' + (name_prefix or 'data') + '.first_mark_l', definition={'type': 'number'}, rule='type')
            if isinstance(data__firstmarkl, (int, float, Decimal)) and (not isinstance(data__firstmarkl, bool)):
                if data__firstmarkl < 0:
                    raise JsonSchemaValueException('minimum', value=data__firstmarkl, name='' + (name_prefix or 'data') + '.first_mark_l', definition={'minimum': 0}, rule='minimum')
                if data__firstmarkl > 1000:
                    raise JsonSchemaValueException('maximum', value=data__firstmarkl, name='' + (name_prefix or 'data') + '.first_mark_l', definition={'maximum': 1000}, rule='maximum')
        if 'jug_first_mark_l' in data_keys:
            data_keys.remove('jug_first_mark_l')
            data__jugfirstmarkl = data['jug_first_mark_l']
            if not isinstance(data__jugfirstmarkl, (int, float, Decimal)) or isinstance(data__jugfirstmarkl, bool):
                raise JsonSchemaValueException('type', value=data__jugfirstmarkl, name='' + (name_prefix or 'data') + '.jug_first_mark_l', definition={'type': 'number'}, rule='type')
            if isinstance(data__jugfirstmarkl, (int, float, Decimal)) and (not isinstance(data__jugfirstmarkl, bool)):
                if data__jugfirstmarkl < 0:
                    raise JsonSchemaValueException('minimum', value=data__jugfirstmarkl, name='' + (name_prefix or 'data') + '.jug_first_mark_l', definition={'minimum': 0}, rule='minimum')
                if data__jugfirstmarkl > 1000:
                    raise JsonSchemaValueException('maximum', value=data__jugfirstmarkl, name='' + (name_prefix or 'data') + '.jug_first_mark_l', definition={'maximum': 1000}, rule='maximum')
        if 'jug_max_l' in data_keys:
            data_keys.remove('jug_max_l')
            data__jugmaxl = data['jug_max_l']
            if not isinstance(data__jugmaxl, (int, float, Decimal)) or isinstance(data__jugmaxl, bool):
                raise JsonSchemaValueException('type', value=data__jugmaxl, name='' + (name_prefix or 'data') + '.jug_max_l', definition={'type': 'number'}, rule='type')
            if isinstance(data__jugmaxl, (int, float, Decimal)) and (not isinstance(data__jugmaxl, bool)):
                if data__jugmaxl > 1000:
                    raise JsonSchemaValueException('maximum', value=data__jugmaxl, name='' + (name_prefix or 'data') + '.jug_max_l', definition={'maximum': 1000}, rule='maximum')
                if data__jugmaxl <= 0:
                    raise JsonSchemaValueException('exclusiveMinimum', value=data__jugmaxl, name='' + (name_prefix or 'data') + '.jug_max_l', definition={'exclusiveMinimum': 0}, rule='exclusiveMinimum')
        if 'measure_by' in data_keys:
            data_keys.remove('measure_by')
            data__measureby = data['measure_by']
            if not isinstance(data__measureby, str):
                raise JsonSchemaValueException('type', value=data__measureby, name='' + (name_prefix or 'data') + '.measure_by', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__measureby, str) and data__measureby == 'jug' or (isinstance(data__measureby, str) and data__measureby == 'pail')):
                raise JsonSchemaValueException('enum', value=data__measureby, name='' + (name_prefix or 'data') + '.measure_by', definition={'enum': ['jug', 'pail']}, rule='enum')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_plan_bucket(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['usable_l', 'water_mark_l', 'jug_mark_l']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['usable_l', 'water_mark_l', 'jug_mark_l']}, rule='required')
        data_keys = set(data.keys())
        if 'usable_l' in data_keys:
            data_keys.remove('usable_l')
            data__usablel = data['usable_l']
            if not isinstance(data__usablel, (int, float, Decimal)) or isinstance(data__usablel, bool):
                raise JsonSchemaValueException('type', value=data__usablel, name='' + (name_prefix or 'data') + '.usable_l', definition={'type': 'number'}, rule='type')
            if isinstance(data__usablel, (int, float, Decimal)) and (not isinstance(data__usablel, bool)):
                if data__usablel < 0.1:
                    raise JsonSchemaValueException('minimum', value=data__usablel, name='' + (name_prefix or 'data') + '.usable_l', definition={'minimum': 0.1}, rule='minimum')
                if data__usablel > 1000:
                    raise JsonSchemaValueException('maximum', value=data__usablel, name='' + (name_prefix or 'data') + '.usable_l', definition={'maximum': 1000}, rule='maximum')
        if 'water_mark_l' in data_keys:
            data_keys.remove('water_mark_l')
            data__watermarkl = data['water_mark_l']
            if not isinstance(data__watermarkl, (int, float, Decimal)) or isinstance(data__watermarkl, bool):
                raise JsonSchemaValueException('type', value=data__watermarkl, name='' + (name_prefix or 'data') + '.water_mark_l', definition={'type': 'number'}, rule='type')
            if isinstance(data__watermarkl, (int, float, Decimal)) and (not isinstance(data__watermarkl, bool)):
                if data__watermarkl < 0.001:
                    raise JsonSchemaValueException('minimum', value=data__watermarkl, name='' + (name_prefix or 'data') + '.water_mark_l', definition={'minimum': 0.001}, rule='minimum')
                if data__watermarkl > 1000:
                    raise JsonSchemaValueException('maximum', value=data__watermarkl, name='' + (name_prefix or 'data') + '.water_mark_l', definition={'maximum': 1000}, rule='maximum')
        if 'jug_mark_l' in data_keys:
            data_keys.remove('jug_mark_l')
            data__jugmarkl = data['jug_mark_l']
            if not isinstance(data__jugmarkl, (int, float, Decimal)) or isinstance(data__jugmarkl, bool):
                raise JsonSchemaValueException('type', value=data__jugmarkl, name='' + (name_prefix or 'data') + '.jug_mark_l', definition={'type': 'number'}, rule='type')
            if isinstance(data__jugmarkl, (int, float, Decimal)) and (not isinstance(data__jugmarkl, bool)):
                if data__jugmarkl < 0.001:
                    raise JsonSchemaValueException('minimum', value=data__jugmarkl, name='' + (name_prefix or 'data') + '.jug_mark_l', definition={'minimum': 0.001}, rule='minimum')
                if data__jugmarkl > 1000:
                    raise JsonSchemaValueException('maximum', value=data__jugmarkl, name='' + (name_prefix or 'data') + '.jug_mark_l', definition={'maximum': 1000}, rule='maximum')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_plan_mixing(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['strong_pct', 'weak_pct', 'closeness_pct']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['strong_pct', 'weak_pct', 'closeness_pct']}, rule='required')
        data_keys = set(data.keys())
        if 'strong_pct' in data_keys:
            data_keys.remove('strong_pct')
            data__strongpct = data['strong_pct']
            if not isinstance(data__strongpct, (int, float, Decimal)) or isinstance(data__strongpct, bool):
                raise JsonSchemaValueException('type', value=data__strongpct, name='' + (name_prefix or 'data') + '.strong_pct', definition={'type': 'number'}, rule='type')
            if isinstance(data__strongpct, (int, float, Decimal)) and (not isinstance(data__strongpct, bool)):
                if data__strongpct > 100:
                    raise JsonSchemaValueException('maximum', value=data__strongpct, name='' + (name_prefix or 'data') + '.strong_pct', definition={'maximum': 100}, rule='maximum')
                if data__strongpct <= 0:
                    raise JsonSchemaValueException('exclusiveMinimum', value=data__strongpct, name='' + (name_prefix or 'data') + '.strong_pct', definition={'exclusiveMinimum': 0}, rule='exclusiveMinimum')
        if 'weak_pct' in data_keys:
            data_keys.remove('weak_pct')
            data__weakpct = data['weak_pct']
            if not isinstance(data__weakpct, (int, float, Decimal)) or isinstance(data__weakpct, bool):
                raise JsonSchemaValueException('type', value=data__weakpct, name='' + (name_prefix or 'data') + '.weak_pct', definition={'type': 'number'}, rule='type')
            if isinstance(data__weakpct, (int, float, Decimal)) and (not isinstance(data__weakpct, bool)):
                if data__weakpct < 0:
                    raise JsonSchemaValueException('minimum', value=data__weakpct, name='' + (name_prefix or 'data') + '.weak_pct', definition={'minimum': 0}, rule='minimum')
                if data__weakpct >= 100:
                    raise JsonSchemaValueException('exclusiveMaximum', value=data__weakpct, name='' + (name_prefix or 'data') + '.weak_pct', definition={'exclusiveMaximum': 100}, rule='exclusiveMaximum')
        if 'closeness_pct' in data_keys:
            data_keys.remove('closeness_pct')
            data__closenesspct = data['closeness_pct']
            if not isinstance(data__closenesspct, (int, float, Decimal)) or isinstance(data__closenesspct, bool):
                raise JsonSchemaValueException('type', value=data__closenesspct, name='' + (name_prefix or 'data') + '.closeness_pct', definition={'type': 'number'}, rule='type')
            if isinstance(data__closenesspct, (int, float, Decimal)) and (not isinstance(data__closenesspct, bool)):
                if data__closenesspct > 10:
                    raise JsonSchemaValueException('maximum', value=data__closenesspct, name='' + (name_prefix or 'data') + '.closeness_pct', definition={'maximum': 10}, rule='maximum')
                if data__closenesspct <= 0:
                    raise JsonSchemaValueException('exclusiveMinimum', value=data__closenesspct, name='' + (name_prefix or 'data') + '.closeness_pct', definition={'exclusiveMinimum': 0}, rule='exclusiveMinimum')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_plan_target(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['low_pct', 'aim_pct', 'high_pct']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['low_pct', 'aim_pct', 'high_pct']}, rule='required')
        data_keys = set(data.keys())
        if 'low_pct' in data_keys:
            data_keys.remove('low_pct')
            data__lowpct = data['low_pct']
            if not isinstance(data__lowpct, (int, float, Decimal)) or isinstance(data__lowpct, bool):
                raise JsonSchemaValueException('type', value=data__lowpct, name='' + (name_prefix or 'data') + '.low_pct', definition={'type': 'number'}, rule='type')
            if isinstance(data__lowpct, (int, float, Decimal)) and (not isinstance(data__lowpct, bool)):
                if data__lowpct <= 0:
                    raise JsonSchemaValueException('exclusiveMinimum', value=data__lowpct, name='' + (name_prefix or 'data') + '.low_pct', definition={'exclusiveMinimum': 0}, rule='exclusiveMinimum')
                if data__lowpct >= 100:
                    raise JsonSchemaValueException('exclusiveMaximum', value=data__lowpct, name='' + (name_prefix or 'data') + '.low_pct', definition={'exclusiveMaximum': 100}, rule='exclusiveMaximum')
        if 'aim_pct' in data_keys:
            data_keys.remove('aim_pct')
            data__aimpct = data['aim_pct']
            if not isinstance(data__aimpct, (int, float, Decimal)) or isinstance(data__aimpct, bool):
                raise JsonSchemaValueException('type', value=data__aimpct, name='' + (name_prefix or 'data') + '.aim_pct', definition={'type': 'number'}, rule='type')
            if isinstance(data__aimpct, (int, float, Decimal)) and (not isinstance(data__aimpct, bool)):
                if data__aimpct <= 0:
                    raise JsonSchemaValueException('exclusiveMinimum', value=data__aimpct, name='' + (name_prefix or 'data') + '.aim_pct', definition={'exclusiveMinimum': 0}, rule='exclusiveMinimum')
                if data__aimpct >= 100:
                    raise JsonSchemaValueException('exclusiveMaximum', value=data__aimpct, name='' + (name_prefix or 'data') + '.aim_pct', definition={'exclusiveMaximum': 100}, rule='exclusiveMaximum')
        if 'high_pct' in data_keys:
            data_keys.remove('high_pct')
            data__highpct = data['high_pct']
            if not isinstance(data__highpct, (int, float, Decimal)) or isinstance(data__highpct, bool):
                raise JsonSchemaValueException('type', value=data__highpct, name='' + (name_prefix or 'data') + '.high_pct', definition={'type': 'number'}, rule='type')
            if isinstance(data__highpct, (int, float, Decimal)) and (not isinstance(data__highpct, bool)):
                if data__highpct <= 0:
                    raise JsonSchemaValueException('exclusiveMinimum', value=data__highpct, name='' + (name_prefix or 'data') + '.high_pct', definition={'exclusiveMinimum': 0}, rule='exclusiveMinimum')
                if data__highpct >= 100:
                    raise JsonSchemaValueException('exclusiveMaximum', value=data__highpct, name='' + (name_prefix or 'data') + '.high_pct', definition={'exclusiveMaximum': 100}, rule='exclusiveMaximum')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_plan_holding_body(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['volume_l', 'fill_to_l', 'usual_pct', 'target', 'mixing', 'bucket']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['volume_l', 'fill_to_l', 'usual_pct', 'target', 'mixing', 'bucket']}, rule='required')
        data_keys = set(data.keys())
        if 'volume_l' in data_keys:
            data_keys.remove('volume_l')
            data__volumel = data['volume_l']
            if not isinstance(data__volumel, dict):
                raise JsonSchemaValueException('type', value=data__volumel, name='' + (name_prefix or 'data') + '.volume_l', definition={'type': 'object'}, rule='type')
            data__volumel_is_dict = isinstance(data__volumel, dict)
            if data__volumel_is_dict:
                data__volumel__missing_keys = set(['value', 'u']) - data__volumel.keys()
                if data__volumel__missing_keys:
                    raise JsonSchemaValueException('required', value=data__volumel, name='' + (name_prefix or 'data') + '.volume_l', definition={'required': ['value', 'u']}, rule='required')
                data__volumel_keys = set(data__volumel.keys())
                if 'value' in data__volumel_keys:
                    data__volumel_keys.remove('value')
                    data__volumel__value = data__volumel['value']
                    if not isinstance(data__volumel__value, (int, float, Decimal)) or isinstance(data__volumel__value, bool):
                        raise JsonSchemaValueException('type', value=data__volumel__value, name='' + (name_prefix or 'data') + '.volume_l.value', definition={'type': 'number'}, rule='type')
                    if isinstance(data__volumel__value, (int, float, Decimal)) and (not isinstance(data__volumel__value, bool)):
                        if data__volumel__value < 0:
                            raise JsonSchemaValueException('minimum', value=data__volumel__value, name='' + (name_prefix or 'data') + '.volume_l.value', definition={'minimum': 0}, rule='minimum')
                        if data__volumel__value > 200000:
                            raise JsonSchemaValueException('maximum', value=data__volumel__value, name='' + (name_prefix or 'data') + '.volume_l.value', definition={'maximum': 200000}, rule='maximum')
                if 'u' in data__volumel_keys:
                    data__volumel_keys.remove('u')
                    data__volumel__u = data__volumel['u']
                    if not isinstance(data__volumel__u, (int, float, Decimal)) or isinstance(data__volumel__u, bool):
                        raise JsonSchemaValueException('type', value=data__volumel__u, name='' + (name_prefix or 'data') + '.volume_l.u', definition={'type': 'number'}, rule='type')
                    if isinstance(data__volumel__u, (int, float, Decimal)) and (not isinstance(data__volumel__u, bool)):
                        if data__volumel__u < 0:
                            raise JsonSchemaValueException('minimum', value=data__volumel__u, name='' + (name_prefix or 'data') + '.volume_l.u', definition={'minimum': 0}, rule='minimum')
                        if data__volumel__u > 200000:
                            raise JsonSchemaValueException('maximum', value=data__volumel__u, name='' + (name_prefix or 'data') + '.volume_l.u', definition={'maximum': 200000}, rule='maximum')
                if data__volumel_keys:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.volume_l must not contain ' + str(data__volumel_keys) + ' properties', value=data__volumel, name='' + (name_prefix or 'data') + '.volume_l', definition={'additionalProperties': False}, rule='additionalProperties')
        if 'fill_to_l' in data_keys:
            data_keys.remove('fill_to_l')
            data__filltol = data['fill_to_l']
            if not isinstance(data__filltol, (int, float, Decimal)) or isinstance(data__filltol, bool):
                raise JsonSchemaValueException('type', value=data__filltol, name='' + (name_prefix or 'data') + '.fill_to_l', definition={'type': 'number'}, rule='type')
            if isinstance(data__filltol, (int, float, Decimal)) and (not isinstance(data__filltol, bool)):
                if data__filltol > 200000:
                    raise JsonSchemaValueException('maximum', value=data__filltol, name='' + (name_prefix or 'data') + '.fill_to_l', definition={'maximum': 200000}, rule='maximum')
                if data__filltol <= 0:
                    raise JsonSchemaValueException('exclusiveMinimum', value=data__filltol, name='' + (name_prefix or 'data') + '.fill_to_l', definition={'exclusiveMinimum': 0}, rule='exclusiveMinimum')
        if 'usual_pct' in data_keys:
            data_keys.remove('usual_pct')
            data__usualpct = data['usual_pct']
            if not isinstance(data__usualpct, (int, float, Decimal)) or isinstance(data__usualpct, bool):
                raise JsonSchemaValueException('type', value=data__usualpct, name='' + (name_prefix or 'data') + '.usual_pct', definition={'type': 'number'}, rule='type')
            if isinstance(data__usualpct, (int, float, Decimal)) and (not isinstance(data__usualpct, bool)):
                if data__usualpct < 0:
                    raise JsonSchemaValueException('minimum', value=data__usualpct, name='' + (name_prefix or 'data') + '.usual_pct', definition={'minimum': 0}, rule='minimum')
                if data__usualpct > 100:
                    raise JsonSchemaValueException('maximum', value=data__usualpct, name='' + (name_prefix or 'data') + '.usual_pct', definition={'maximum': 100}, rule='maximum')
        if 'target' in data_keys:
            data_keys.remove('target')
            data__target = data['target']
            validate___definitions_plan_target(data__target, custom_formats, (name_prefix or 'data') + '.target')
        if 'mixing' in data_keys:
            data_keys.remove('mixing')
            data__mixing = data['mixing']
            validate___definitions_plan_mixing(data__mixing, custom_formats, (name_prefix or 'data') + '.mixing')
        if 'bucket' in data_keys:
            data_keys.remove('bucket')
            data__bucket = data['bucket']
            validate___definitions_plan_bucket(data__bucket, custom_formats, (name_prefix or 'data') + '.bucket')
        if 'last' in data_keys:
            data_keys.remove('last')
            data__last = data['last']
            if not isinstance(data__last, dict):
                raise JsonSchemaValueException('type', value=data__last, name='' + (name_prefix or 'data') + '.last', definition={'type': 'object'}, rule='type')
            data__last_is_dict = isinstance(data__last, dict)
            if data__last_is_dict:
                data__last__missing_keys = set(['strength_pct', 'age_d', 'drift_pct_d']) - data__last.keys()
                if data__last__missing_keys:
                    raise JsonSchemaValueException('required', value=data__last, name='' + (name_prefix or 'data') + '.last', definition={'required': ['strength_pct', 'age_d', 'drift_pct_d']}, rule='required')
                data__last_keys = set(data__last.keys())
                if 'strength_pct' in data__last_keys:
                    data__last_keys.remove('strength_pct')
                    data__last__strengthpct = data__last['strength_pct']
                    if not isinstance(data__last__strengthpct, dict):
                        raise JsonSchemaValueException('type', value=data__last__strengthpct, name='' + (name_prefix or 'data') + '.last.strength_pct', definition={'type': 'object'}, rule='type')
                    data__last__strengthpct_is_dict = isinstance(data__last__strengthpct, dict)
                    if data__last__strengthpct_is_dict:
                        data__last__strengthpct__missing_keys = set(['value', 'u']) - data__last__strengthpct.keys()
                        if data__last__strengthpct__missing_keys:
                            raise JsonSchemaValueException('required', value=data__last__strengthpct, name='' + (name_prefix or 'data') + '.last.strength_pct', definition={'required': ['value', 'u']}, rule='required')
                        data__last__strengthpct_keys = set(data__last__strengthpct.keys())
                        if 'value' in data__last__strengthpct_keys:
                            data__last__strengthpct_keys.remove('value')
                            data__last__strengthpct__value = data__last__strengthpct['value']
                            if not isinstance(data__last__strengthpct__value, (int, float, Decimal)) or isinstance(data__last__strengthpct__value, bool):
                                raise JsonSchemaValueException('type', value=data__last__strengthpct__value, name='' + (name_prefix or 'data') + '.last.strength_pct.value', definition={'type': 'number'}, rule='type')
                            if isinstance(data__last__strengthpct__value, (int, float, Decimal)) and (not isinstance(data__last__strengthpct__value, bool)):
                                if data__last__strengthpct__value < 0:
                                    raise JsonSchemaValueException('minimum', value=data__last__strengthpct__value, name='' + (name_prefix or 'data') + '.last.strength_pct.value', definition={'minimum': 0}, rule='minimum')
                                if data__last__strengthpct__value >= 40:
                                    raise JsonSchemaValueException('exclusiveMaximum', value=data__last__strengthpct__value, name='' + (name_prefix or 'data') + '.last.strength_pct.value', definition={'exclusiveMaximum': 40}, rule='exclusiveMaximum')
                        if 'u' in data__last__strengthpct_keys:
                            data__last__strengthpct_keys.remove('u')
                            data__last__strengthpct__u = data__last__strengthpct['u']
                            if not isinstance(data__last__strengthpct__u, (int, float, Decimal)) or isinstance(data__last__strengthpct__u, bool):
                                raise JsonSchemaValueException('type', value=data__last__strengthpct__u, name='' + (name_prefix or 'data') + '.last.strength_pct.u', definition={'type': 'number'}, rule='type')
                            if isinstance(data__last__strengthpct__u, (int, float, Decimal)) and (not isinstance(data__last__strengthpct__u, bool)):
                                if data__last__strengthpct__u < 0:
                                    raise JsonSchemaValueException('minimum', value=data__last__strengthpct__u, name='' + (name_prefix or 'data') + '.last.strength_pct.u', definition={'minimum': 0}, rule='minimum')
                                if data__last__strengthpct__u > 100:
                                    raise JsonSchemaValueException('maximum', value=data__last__strengthpct__u, name='' + (name_prefix or 'data') + '.last.strength_pct.u', definition={'maximum': 100}, rule='maximum')
                        if data__last__strengthpct_keys:
                            raise JsonSchemaValueException('' + (name_prefix or 'data') + '.last.strength_pct must not contain ' + str(data__last__strengthpct_keys) + ' properties', value=data__last__strengthpct, name='' + (name_prefix or 'data') + '.last.strength_pct', definition={'additionalProperties': False}, rule='additionalProperties')
                if 'age_d' in data__last_keys:
                    data__last_keys.remove('age_d')
                    data__last__aged = data__last['age_d']
                    if not isinstance(data__last__aged, (int, float, Decimal)) or isinstance(data__last__aged, bool):
                        raise JsonSchemaValueException('type', value=data__last__aged, name='' + (name_prefix or 'data') + '.last.age_d', definition={'type': 'number'}, rule='type')
                    if isinstance(data__last__aged, (int, float, Decimal)) and (not isinstance(data__last__aged, bool)):
                        if data__last__aged < 0:
                            raise JsonSchemaValueException('minimum', value=data__last__aged, name='' + (name_prefix or 'data') + '.last.age_d', definition={'minimum': 0}, rule='minimum')
                        if data__last__aged > 3650:
                            raise JsonSchemaValueException('maximum', value=data__last__aged, name='' + (name_prefix or 'data') + '.last.age_d', definition={'maximum': 3650}, rule='maximum')
                if 'drift_pct_d' in data__last_keys:
                    data__last_keys.remove('drift_pct_d')
                    data__last__driftpctd = data__last['drift_pct_d']
                    if not isinstance(data__last__driftpctd, (int, float, Decimal)) or isinstance(data__last__driftpctd, bool):
                        raise JsonSchemaValueException('type', value=data__last__driftpctd, name='' + (name_prefix or 'data') + '.last.drift_pct_d', definition={'type': 'number'}, rule='type')
                    if isinstance(data__last__driftpctd, (int, float, Decimal)) and (not isinstance(data__last__driftpctd, bool)):
                        if data__last__driftpctd < 0:
                            raise JsonSchemaValueException('minimum', value=data__last__driftpctd, name='' + (name_prefix or 'data') + '.last.drift_pct_d', definition={'minimum': 0}, rule='minimum')
                        if data__last__driftpctd > 40:
                            raise JsonSchemaValueException('maximum', value=data__last__driftpctd, name='' + (name_prefix or 'data') + '.last.drift_pct_d', definition={'maximum': 40}, rule='maximum')
                if data__last_keys:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.last must not contain ' + str(data__last_keys) + ' properties', value=data__last, name='' + (name_prefix or 'data') + '.last', definition={'additionalProperties': False}, rule='additionalProperties')
        if 'pail' in data_keys:
            data_keys.remove('pail')
            data__pail = data['pail']
            validate___definitions_plan_pail(data__pail, custom_formats, (name_prefix or 'data') + '.pail')
        if 'level_u_l' in data_keys:
            data_keys.remove('level_u_l')
            data__levelul = data['level_u_l']
            if not isinstance(data__levelul, (int, float, Decimal)) or isinstance(data__levelul, bool):
                raise JsonSchemaValueException('type', value=data__levelul, name='' + (name_prefix or 'data') + '.level_u_l', definition={'type': 'number'}, rule='type')
            if isinstance(data__levelul, (int, float, Decimal)) and (not isinstance(data__levelul, bool)):
                if data__levelul < 0:
                    raise JsonSchemaValueException('minimum', value=data__levelul, name='' + (name_prefix or 'data') + '.level_u_l', definition={'minimum': 0}, rule='minimum')
                if data__levelul > 200000:
                    raise JsonSchemaValueException('maximum', value=data__levelul, name='' + (name_prefix or 'data') + '.level_u_l', definition={'maximum': 200000}, rule='maximum')
        if 'mix_min' in data_keys:
            data_keys.remove('mix_min')
            data__mixmin = data['mix_min']
            if not isinstance(data__mixmin, int) and (not (isinstance(data__mixmin, float) and data__mixmin.is_integer())) or isinstance(data__mixmin, bool):
                raise JsonSchemaValueException('type', value=data__mixmin, name='' + (name_prefix or 'data') + '.mix_min', definition={'type': 'integer'}, rule='type')
            if isinstance(data__mixmin, (int, float, Decimal)) and (not isinstance(data__mixmin, bool)):
                if data__mixmin < 1:
                    raise JsonSchemaValueException('minimum', value=data__mixmin, name='' + (name_prefix or 'data') + '.mix_min', definition={'minimum': 1}, rule='minimum')
                if data__mixmin > 1440:
                    raise JsonSchemaValueException('maximum', value=data__mixmin, name='' + (name_prefix or 'data') + '.mix_min', definition={'maximum': 1440}, rule='maximum')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_plan_check_body(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['machine', 'dip', 'reading']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['machine', 'dip', 'reading']}, rule='required')
        data_keys = set(data.keys())
        if 'machine' in data_keys:
            data_keys.remove('machine')
            data__machine = data['machine']
            validate___definitions_machine_typed(data__machine, custom_formats, (name_prefix or 'data') + '.machine')
        if 'dip' in data_keys:
            data_keys.remove('dip')
            data__dip = data['dip']
            validate___definitions_dip_typed(data__dip, custom_formats, (name_prefix or 'data') + '.dip')
        if 'reading' in data_keys:
            data_keys.remove('reading')
            data__reading = data['reading']
            validate___definitions_reading_typed(data__reading, custom_formats, (name_prefix or 'data') + '.reading')
        if 'aim' in data_keys:
            data_keys.remove('aim')
            data__aim = data['aim']
            validate___definitions_typed(data__aim, custom_formats, (name_prefix or 'data') + '.aim')
        if 'fill_to_depth' in data_keys:
            data_keys.remove('fill_to_depth')
            data__filltodepth = data['fill_to_depth']
            validate___definitions_typed(data__filltodepth, custom_formats, (name_prefix or 'data') + '.fill_to_depth')
        if 'concentrate_at_hand' in data_keys:
            data_keys.remove('concentrate_at_hand')
            data__concentrateathand = data['concentrate_at_hand']
            validate___definitions_typed(data__concentrateathand, custom_formats, (name_prefix or 'data') + '.concentrate_at_hand')
        if 'hidden_strength' in data_keys:
            data_keys.remove('hidden_strength')
            data__hiddenstrength = data['hidden_strength']
            validate___definitions_typed(data__hiddenstrength, custom_formats, (name_prefix or 'data') + '.hidden_strength')
        if 'second' in data_keys:
            data_keys.remove('second')
            data__second = data['second']
            validate___definitions_second_typed(data__second, custom_formats, (name_prefix or 'data') + '.second')
        if 'now' in data_keys:
            data_keys.remove('now')
            data__now = data['now']
            if not isinstance(data__now, str):
                raise JsonSchemaValueException('type', value=data__now, name='' + (name_prefix or 'data') + '.now', definition={'type': 'string'}, rule='type')
            if isinstance(data__now, str):
                data__now_len = len(data__now)
                if data__now_len > 40:
                    raise JsonSchemaValueException('maxLength', value=data__now, name='' + (name_prefix or 'data') + '.now', definition={'maxLength': 40}, rule='maxLength')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_plan_charge_body(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['machine', 'left', 'left_strength']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['machine', 'left', 'left_strength']}, rule='required')
        data_keys = set(data.keys())
        if 'machine' in data_keys:
            data_keys.remove('machine')
            data__machine = data['machine']
            validate___definitions_machine_typed(data__machine, custom_formats, (name_prefix or 'data') + '.machine')
        if 'left' in data_keys:
            data_keys.remove('left')
            data__left = data['left']
            validate___definitions_typed(data__left, custom_formats, (name_prefix or 'data') + '.left')
        if 'left_strength' in data_keys:
            data_keys.remove('left_strength')
            data__leftstrength = data['left_strength']
            validate___definitions_typed(data__leftstrength, custom_formats, (name_prefix or 'data') + '.left_strength')
        if 'concentrate_at_hand' in data_keys:
            data_keys.remove('concentrate_at_hand')
            data__concentrateathand = data['concentrate_at_hand']
            validate___definitions_typed(data__concentrateathand, custom_formats, (name_prefix or 'data') + '.concentrate_at_hand')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_merge_logs_body(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['files']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['files']}, rule='required')
        data_keys = set(data.keys())
        if 'files' in data_keys:
            data_keys.remove('files')
            data__files = data['files']
            if not isinstance(data__files, (list, tuple)):
                raise JsonSchemaValueException('type', value=data__files, name='' + (name_prefix or 'data') + '.files', definition={'type': 'array'}, rule='type')
            data__files_is_list = isinstance(data__files, (list, tuple))
            if data__files_is_list:
                data__files_len = len(data__files)
                if data__files_len < 1:
                    raise JsonSchemaValueException('minItems', value=data__files, name='' + (name_prefix or 'data') + '.files', definition={'minItems': 1}, rule='minItems')
                if data__files_len > 1000:
                    raise JsonSchemaValueException('maxItems', value=data__files, name='' + (name_prefix or 'data') + '.files', definition={'maxItems': 1000}, rule='maxItems')
                for data__files_x, data__files_item in enumerate(data__files):
                    if not isinstance(data__files_item, dict):
                        raise JsonSchemaValueException('type', value=data__files_item, name='' + (name_prefix or 'data') + '.files[{data__files_x}]'.format(**locals()) + '', definition={'type': 'object'}, rule='type')
                    data__files_item_is_dict = isinstance(data__files_item, dict)
                    if data__files_item_is_dict:
                        data__files_item__missing_keys = set(['name', 'text']) - data__files_item.keys()
                        if data__files_item__missing_keys:
                            raise JsonSchemaValueException('required', value=data__files_item, name='' + (name_prefix or 'data') + '.files[{data__files_x}]'.format(**locals()) + '', definition={'required': ['name', 'text']}, rule='required')
                        data__files_item_keys = set(data__files_item.keys())
                        if 'name' in data__files_item_keys:
                            data__files_item_keys.remove('name')
                            data__files_item__name = data__files_item['name']
                            if not isinstance(data__files_item__name, str):
                                raise JsonSchemaValueException('type', value=data__files_item__name, name='' + (name_prefix or 'data') + '.files[{data__files_x}].name'.format(**locals()) + '', definition={'type': 'string'}, rule='type')
                            if isinstance(data__files_item__name, str):
                                data__files_item__name_len = len(data__files_item__name)
                                if data__files_item__name_len > 300:
                                    raise JsonSchemaValueException('maxLength', value=data__files_item__name, name='' + (name_prefix or 'data') + '.files[{data__files_x}].name'.format(**locals()) + '', definition={'maxLength': 300}, rule='maxLength')
                        if 'text' in data__files_item_keys:
                            data__files_item_keys.remove('text')
                            data__files_item__text = data__files_item['text']
                            if not isinstance(data__files_item__text, str):
                                raise JsonSchemaValueException('type', value=data__files_item__text, name='' + (name_prefix or 'data') + '.files[{data__files_x}].text'.format(**locals()) + '', definition={'type': 'string'}, rule='type')
                        if data__files_item_keys:
                            raise JsonSchemaValueException('' + (name_prefix or 'data') + '.files[{data__files_x}]'.format(**locals()) + ' must not contain ' + str(data__files_item_keys) + ' properties', value=data__files_item, name='' + (name_prefix or 'data') + '.files[{data__files_x}]'.format(**locals()) + '', definition={'additionalProperties': False}, rule='additionalProperties')
        if 'now' in data_keys:
            data_keys.remove('now')
            data__now = data['now']
            validate___definitions_moment(data__now, custom_formats, (name_prefix or 'data') + '.now')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_make_code_body(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['code_number']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['code_number']}, rule='required')
        data_keys = set(data.keys())
        if 'code_number' in data_keys:
            data_keys.remove('code_number')
            data__codenumber = data['code_number']
            if not isinstance(data__codenumber, int) and (not (isinstance(data__codenumber, float) and data__codenumber.is_integer())) or isinstance(data__codenumber, bool):
                raise JsonSchemaValueException('type', value=data__codenumber, name='' + (name_prefix or 'data') + '.code_number', definition={'type': 'integer'}, rule='type')
            if isinstance(data__codenumber, (int, float, Decimal)) and (not isinstance(data__codenumber, bool)):
                if data__codenumber < 0:
                    raise JsonSchemaValueException('minimum', value=data__codenumber, name='' + (name_prefix or 'data') + '.code_number', definition={'minimum': 0}, rule='minimum')
                if data__codenumber > 923520:
                    raise JsonSchemaValueException('maximum', value=data__codenumber, name='' + (name_prefix or 'data') + '.code_number', definition={'maximum': 923520}, rule='maximum')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_look_back_body(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['lines', 'machine', 'now']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['lines', 'machine', 'now']}, rule='required')
        data_keys = set(data.keys())
        if 'lines' in data_keys:
            data_keys.remove('lines')
            data__lines = data['lines']
            if not isinstance(data__lines, (list, tuple)):
                raise JsonSchemaValueException('type', value=data__lines, name='' + (name_prefix or 'data') + '.lines', definition={'type': 'array'}, rule='type')
            data__lines_is_list = isinstance(data__lines, (list, tuple))
            if data__lines_is_list:
                data__lines_len = len(data__lines)
                if data__lines_len > 50000:
                    raise JsonSchemaValueException('maxItems', value=data__lines, name='' + (name_prefix or 'data') + '.lines', definition={'maxItems': 50000}, rule='maxItems')
                for data__lines_x, data__lines_item in enumerate(data__lines):
                    if not isinstance(data__lines_item, str):
                        raise JsonSchemaValueException('type', value=data__lines_item, name='' + (name_prefix or 'data') + '.lines[{data__lines_x}]'.format(**locals()) + '', definition={'type': 'string'}, rule='type')
        if 'machine' in data_keys:
            data_keys.remove('machine')
            data__machine = data['machine']
            validate___definitions_entry_id(data__machine, custom_formats, (name_prefix or 'data') + '.machine')
        if 'now' in data_keys:
            data_keys.remove('now')
            data__now = data['now']
            validate___definitions_moment(data__now, custom_formats, (name_prefix or 'data') + '.now')
        if 'dip' in data_keys:
            data_keys.remove('dip')
            data__dip = data['dip']
            validate___definitions_dip_typed(data__dip, custom_formats, (name_prefix or 'data') + '.dip')
        if 'reading' in data_keys:
            data_keys.remove('reading')
            data__reading = data['reading']
            validate___definitions_reading_typed(data__reading, custom_formats, (name_prefix or 'data') + '.reading')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_judge_practice_body(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['check', 'answers']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['check', 'answers']}, rule='required')
        data_keys = set(data.keys())
        if 'check' in data_keys:
            data_keys.remove('check')
            data__check = data['check']
            validate___definitions_plan_check_body(data__check, custom_formats, (name_prefix or 'data') + '.check')
        if 'answers' in data_keys:
            data_keys.remove('answers')
            data__answers = data['answers']
            validate___definitions_practice_answers(data__answers, custom_formats, (name_prefix or 'data') + '.answers')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_practice_answers(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set([]) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': []}, rule='required')
        data_keys = set(data.keys())
        if 'volume' in data_keys:
            data_keys.remove('volume')
            data__volume = data['volume']
            validate___definitions_typed(data__volume, custom_formats, (name_prefix or 'data') + '.volume')
        if 'strength' in data_keys:
            data_keys.remove('strength')
            data__strength = data['strength']
            validate___definitions_typed(data__strength, custom_formats, (name_prefix or 'data') + '.strength')
        if 'room' in data_keys:
            data_keys.remove('room')
            data__room = data['room']
            validate___definitions_typed(data__room, custom_formats, (name_prefix or 'data') + '.room')
        if 'take_out' in data_keys:
            data_keys.remove('take_out')
            data__takeout = data['take_out']
            validate___definitions_typed(data__takeout, custom_formats, (name_prefix or 'data') + '.take_out')
        if 'top_up' in data_keys:
            data_keys.remove('top_up')
            data__topup = data['top_up']
            validate___definitions_typed(data__topup, custom_formats, (name_prefix or 'data') + '.top_up')
        if 'pours' in data_keys:
            data_keys.remove('pours')
            data__pours = data['pours']
            if not isinstance(data__pours, (list, tuple)):
                raise JsonSchemaValueException('type', value=data__pours, name='' + (name_prefix or 'data') + '.pours', definition={'type': 'array'}, rule='type')
            data__pours_is_list = isinstance(data__pours, (list, tuple))
            if data__pours_is_list:
                data__pours_len = len(data__pours)
                if data__pours_len < 1:
                    raise JsonSchemaValueException('minItems', value=data__pours, name='' + (name_prefix or 'data') + '.pours', definition={'minItems': 1}, rule='minItems')
                if data__pours_len > 6:
                    raise JsonSchemaValueException('maxItems', value=data__pours, name='' + (name_prefix or 'data') + '.pours', definition={'maxItems': 6}, rule='maxItems')
                for data__pours_x, data__pours_item in enumerate(data__pours):
                    validate___definitions_own_bucket_typed(data__pours_item, custom_formats, (name_prefix or 'data') + '.pours[{data__pours_x}]'.format(**locals()))
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_own_bucket_typed(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['count', 'water', 'concentrate']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['count', 'water', 'concentrate']}, rule='required')
        data_keys = set(data.keys())
        if 'count' in data_keys:
            data_keys.remove('count')
            data__count = data['count']
            validate___definitions_typed(data__count, custom_formats, (name_prefix or 'data') + '.count')
        if 'water' in data_keys:
            data_keys.remove('water')
            data__water = data['water']
            validate___definitions_typed(data__water, custom_formats, (name_prefix or 'data') + '.water')
        if 'concentrate' in data_keys:
            data_keys.remove('concentrate')
            data__concentrate = data['concentrate']
            validate___definitions_typed(data__concentrate, custom_formats, (name_prefix or 'data') + '.concentrate')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_judge_look_body(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['seen']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['seen']}, rule='required')
        data_keys = set(data.keys())
        if 'seen' in data_keys:
            data_keys.remove('seen')
            data__seen = data['seen']
            if not isinstance(data__seen, (list, tuple)):
                raise JsonSchemaValueException('type', value=data__seen, name='' + (name_prefix or 'data') + '.seen', definition={'type': 'array'}, rule='type')
            data__seen_is_list = isinstance(data__seen, (list, tuple))
            if data__seen_is_list:
                data__seen_len = len(data__seen)
                if data__seen_len > 20:
                    raise JsonSchemaValueException('maxItems', value=data__seen, name='' + (name_prefix or 'data') + '.seen', definition={'maxItems': 20}, rule='maxItems')
                for data__seen_x, data__seen_item in enumerate(data__seen):
                    validate___definitions_look(data__seen_item, custom_formats, (name_prefix or 'data') + '.seen[{data__seen_x}]'.format(**locals()))
        if 'fluid_type' in data_keys:
            data_keys.remove('fluid_type')
            data__fluidtype = data['fluid_type']
            if not isinstance(data__fluidtype, str):
                raise JsonSchemaValueException('type', value=data__fluidtype, name='' + (name_prefix or 'data') + '.fluid_type', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__fluidtype, str) and data__fluidtype == 'soluble_oil' or (isinstance(data__fluidtype, str) and data__fluidtype == 'semi_synthetic') or (isinstance(data__fluidtype, str) and data__fluidtype == 'synthetic')):
                raise JsonSchemaValueException('enum', value=data__fluidtype, name='' + (name_prefix or 'data') + '.fluid_type', definition={'enum': ['soluble_oil', 'semi_synthetic', 'synthetic']}, rule='enum')
        if 'smell_again' in data_keys:
            data_keys.remove('smell_again')
            data__smellagain = data['smell_again']
            if not isinstance(data__smellagain, str):
                raise JsonSchemaValueException('type', value=data__smellagain, name='' + (name_prefix or 'data') + '.smell_again', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__smellagain, str) and data__smellagain == 'gone' or (isinstance(data__smellagain, str) and data__smellagain == 'still')):
                raise JsonSchemaValueException('enum', value=data__smellagain, name='' + (name_prefix or 'data') + '.smell_again', definition={'enum': ['gone', 'still']}, rule='enum')
        if 'ph' in data_keys:
            data_keys.remove('ph')
            data__ph = data['ph']
            validate___definitions_typed(data__ph, custom_formats, (name_prefix or 'data') + '.ph')
        if 'first_fill_ph' in data_keys:
            data_keys.remove('first_fill_ph')
            data__firstfillph = data['first_fill_ph']
            validate___definitions_typed(data__firstfillph, custom_formats, (name_prefix or 'data') + '.first_fill_ph')
        if 'nitrite' in data_keys:
            data_keys.remove('nitrite')
            data__nitrite = data['nitrite']
            validate___definitions_typed(data__nitrite, custom_formats, (name_prefix or 'data') + '.nitrite')
        if 'nitrite_before' in data_keys:
            data_keys.remove('nitrite_before')
            data__nitritebefore = data['nitrite_before']
            if not isinstance(data__nitritebefore, (list, tuple)):
                raise JsonSchemaValueException('type', value=data__nitritebefore, name='' + (name_prefix or 'data') + '.nitrite_before', definition={'type': 'array'}, rule='type')
            data__nitritebefore_is_list = isinstance(data__nitritebefore, (list, tuple))
            if data__nitritebefore_is_list:
                data__nitritebefore_len = len(data__nitritebefore)
                if data__nitritebefore_len > 200:
                    raise JsonSchemaValueException('maxItems', value=data__nitritebefore, name='' + (name_prefix or 'data') + '.nitrite_before', definition={'maxItems': 200}, rule='maxItems')
                for data__nitritebefore_x, data__nitritebefore_item in enumerate(data__nitritebefore):
                    validate___definitions_typed(data__nitritebefore_item, custom_formats, (name_prefix or 'data') + '.nitrite_before[{data__nitritebefore_x}]'.format(**locals()))
        if 'temperature' in data_keys:
            data_keys.remove('temperature')
            data__temperature = data['temperature']
            validate___definitions_typed(data__temperature, custom_formats, (name_prefix or 'data') + '.temperature')
        if 'dip_slide' in data_keys:
            data_keys.remove('dip_slide')
            data__dipslide = data['dip_slide']
            validate___definitions_look_slide(data__dipslide, custom_formats, (name_prefix or 'data') + '.dip_slide')
        if 'limits' in data_keys:
            data_keys.remove('limits')
            data__limits = data['limits']
            validate___definitions_look_limits(data__limits, custom_formats, (name_prefix or 'data') + '.limits')
        if 'foam_from' in data_keys:
            data_keys.remove('foam_from')
            data__foamfrom = data['foam_from']
            if not isinstance(data__foamfrom, str):
                raise JsonSchemaValueException('type', value=data__foamfrom, name='' + (name_prefix or 'data') + '.foam_from', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__foamfrom, str) and data__foamfrom == 'level' or (isinstance(data__foamfrom, str) and data__foamfrom == 'cleaner') or (isinstance(data__foamfrom, str) and data__foamfrom == 'strength') or (isinstance(data__foamfrom, str) and data__foamfrom == 'water') or (isinstance(data__foamfrom, str) and data__foamfrom == 'none')):
                raise JsonSchemaValueException('enum', value=data__foamfrom, name='' + (name_prefix or 'data') + '.foam_from', definition={'enum': ['level', 'cleaner', 'strength', 'water', 'none']}, rule='enum')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_look_slide(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set([]) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': []}, rule='required')
        data_keys = set(data.keys())
        if 'germs' in data_keys:
            data_keys.remove('germs')
            data__germs = data['germs']
            validate___definitions_typed(data__germs, custom_formats, (name_prefix or 'data') + '.germs')
        if 'yeast' in data_keys:
            data_keys.remove('yeast')
            data__yeast = data['yeast']
            validate___definitions_typed(data__yeast, custom_formats, (name_prefix or 'data') + '.yeast')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_hold_check_body(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['machine', 'dip', 'now']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['machine', 'dip', 'now']}, rule='required')
        data_keys = set(data.keys())
        if 'machine' in data_keys:
            data_keys.remove('machine')
            data__machine = data['machine']
            validate___definitions_machine_typed(data__machine, custom_formats, (name_prefix or 'data') + '.machine')
        if 'dip' in data_keys:
            data_keys.remove('dip')
            data__dip = data['dip']
            validate___definitions_dip_typed(data__dip, custom_formats, (name_prefix or 'data') + '.dip')
        if 'usual' in data_keys:
            data_keys.remove('usual')
            data__usual = data['usual']
            validate___definitions_typed(data__usual, custom_formats, (name_prefix or 'data') + '.usual')
        if 'fill_to_depth' in data_keys:
            data_keys.remove('fill_to_depth')
            data__filltodepth = data['fill_to_depth']
            validate___definitions_typed(data__filltodepth, custom_formats, (name_prefix or 'data') + '.fill_to_depth')
        if 'last' in data_keys:
            data_keys.remove('last')
            data__last = data['last']
            if not isinstance(data__last, dict):
                raise JsonSchemaValueException('type', value=data__last, name='' + (name_prefix or 'data') + '.last', definition={'type': 'object'}, rule='type')
            data__last_is_dict = isinstance(data__last, dict)
            if data__last_is_dict:
                data__last__missing_keys = set(['check', 'at']) - data__last.keys()
                if data__last__missing_keys:
                    raise JsonSchemaValueException('required', value=data__last, name='' + (name_prefix or 'data') + '.last', definition={'required': ['check', 'at']}, rule='required')
                data__last_keys = set(data__last.keys())
                if 'check' in data__last_keys:
                    data__last_keys.remove('check')
                    data__last__check = data__last['check']
                    validate___definitions_plan_check_body(data__last__check, custom_formats, (name_prefix or 'data') + '.last.check')
                if 'at' in data__last_keys:
                    data__last_keys.remove('at')
                    data__last__at = data__last['at']
                    if not isinstance(data__last__at, str):
                        raise JsonSchemaValueException('type', value=data__last__at, name='' + (name_prefix or 'data') + '.last.at', definition={'type': 'string'}, rule='type')
                    if isinstance(data__last__at, str):
                        data__last__at_len = len(data__last__at)
                        if data__last__at_len > 40:
                            raise JsonSchemaValueException('maxLength', value=data__last__at, name='' + (name_prefix or 'data') + '.last.at', definition={'maxLength': 40}, rule='maxLength')
                if data__last_keys:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.last must not contain ' + str(data__last_keys) + ' properties', value=data__last, name='' + (name_prefix or 'data') + '.last', definition={'additionalProperties': False}, rule='additionalProperties')
        if 'read' in data_keys:
            data_keys.remove('read')
            data__read = data['read']
            if not isinstance(data__read, dict):
                raise JsonSchemaValueException('type', value=data__read, name='' + (name_prefix or 'data') + '.read', definition={'type': 'object'}, rule='type')
            data__read_is_dict = isinstance(data__read, dict)
            if data__read_is_dict:
                data__read__missing_keys = set(['machine', 'reading', 'at']) - data__read.keys()
                if data__read__missing_keys:
                    raise JsonSchemaValueException('required', value=data__read, name='' + (name_prefix or 'data') + '.read', definition={'required': ['machine', 'reading', 'at']}, rule='required')
                data__read_keys = set(data__read.keys())
                if 'machine' in data__read_keys:
                    data__read_keys.remove('machine')
                    data__read__machine = data__read['machine']
                    validate___definitions_machine_typed(data__read__machine, custom_formats, (name_prefix or 'data') + '.read.machine')
                if 'reading' in data__read_keys:
                    data__read_keys.remove('reading')
                    data__read__reading = data__read['reading']
                    validate___definitions_reading_typed(data__read__reading, custom_formats, (name_prefix or 'data') + '.read.reading')
                if 'at' in data__read_keys:
                    data__read_keys.remove('at')
                    data__read__at = data__read['at']
                    if not isinstance(data__read__at, str):
                        raise JsonSchemaValueException('type', value=data__read__at, name='' + (name_prefix or 'data') + '.read.at', definition={'type': 'string'}, rule='type')
                    if isinstance(data__read__at, str):
                        data__read__at_len = len(data__read__at)
                        if data__read__at_len > 40:
                            raise JsonSchemaValueException('maxLength', value=data__read__at, name='' + (name_prefix or 'data') + '.read.at', definition={'maxLength': 40}, rule='maxLength')
                if data__read_keys:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.read must not contain ' + str(data__read_keys) + ' properties', value=data__read, name='' + (name_prefix or 'data') + '.read', definition={'additionalProperties': False}, rule='additionalProperties')
        if 'now' in data_keys:
            data_keys.remove('now')
            data__now = data['now']
            if not isinstance(data__now, str):
                raise JsonSchemaValueException('type', value=data__now, name='' + (name_prefix or 'data') + '.now', definition={'type': 'string'}, rule='type')
            if isinstance(data__now, str):
                data__now_len = len(data__now)
                if data__now_len > 40:
                    raise JsonSchemaValueException('maxLength', value=data__now, name='' + (name_prefix or 'data') + '.now', definition={'maxLength': 40}, rule='maxLength')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_handover_body(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['lines', 'now', 'since']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['lines', 'now', 'since']}, rule='required')
        data_keys = set(data.keys())
        if 'lines' in data_keys:
            data_keys.remove('lines')
            data__lines = data['lines']
            if not isinstance(data__lines, (list, tuple)):
                raise JsonSchemaValueException('type', value=data__lines, name='' + (name_prefix or 'data') + '.lines', definition={'type': 'array'}, rule='type')
            data__lines_is_list = isinstance(data__lines, (list, tuple))
            if data__lines_is_list:
                data__lines_len = len(data__lines)
                if data__lines_len > 50000:
                    raise JsonSchemaValueException('maxItems', value=data__lines, name='' + (name_prefix or 'data') + '.lines', definition={'maxItems': 50000}, rule='maxItems')
                for data__lines_x, data__lines_item in enumerate(data__lines):
                    if not isinstance(data__lines_item, str):
                        raise JsonSchemaValueException('type', value=data__lines_item, name='' + (name_prefix or 'data') + '.lines[{data__lines_x}]'.format(**locals()) + '', definition={'type': 'string'}, rule='type')
        if 'heads' in data_keys:
            data_keys.remove('heads')
            data__heads = data['heads']
            if not isinstance(data__heads, (list, tuple)):
                raise JsonSchemaValueException('type', value=data__heads, name='' + (name_prefix or 'data') + '.heads', definition={'type': 'array'}, rule='type')
            data__heads_is_list = isinstance(data__heads, (list, tuple))
            if data__heads_is_list:
                data__heads_len = len(data__heads)
                if data__heads_len > 1000:
                    raise JsonSchemaValueException('maxItems', value=data__heads, name='' + (name_prefix or 'data') + '.heads', definition={'maxItems': 1000}, rule='maxItems')
                for data__heads_x, data__heads_item in enumerate(data__heads):
                    validate___definitions_log_head(data__heads_item, custom_formats, (name_prefix or 'data') + '.heads[{data__heads_x}]'.format(**locals()))
        if 'now' in data_keys:
            data_keys.remove('now')
            data__now = data['now']
            validate___definitions_moment(data__now, custom_formats, (name_prefix or 'data') + '.now')
        if 'since' in data_keys:
            data_keys.remove('since')
            data__since = data['since']
            validate___definitions_moment(data__since, custom_formats, (name_prefix or 'data') + '.since')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_fold_log_body(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['lines', 'now']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['lines', 'now']}, rule='required')
        data_keys = set(data.keys())
        if 'lines' in data_keys:
            data_keys.remove('lines')
            data__lines = data['lines']
            if not isinstance(data__lines, (list, tuple)):
                raise JsonSchemaValueException('type', value=data__lines, name='' + (name_prefix or 'data') + '.lines', definition={'type': 'array'}, rule='type')
            data__lines_is_list = isinstance(data__lines, (list, tuple))
            if data__lines_is_list:
                data__lines_len = len(data__lines)
                if data__lines_len > 50000:
                    raise JsonSchemaValueException('maxItems', value=data__lines, name='' + (name_prefix or 'data') + '.lines', definition={'maxItems': 50000}, rule='maxItems')
                for data__lines_x, data__lines_item in enumerate(data__lines):
                    if not isinstance(data__lines_item, str):
                        raise JsonSchemaValueException('type', value=data__lines_item, name='' + (name_prefix or 'data') + '.lines[{data__lines_x}]'.format(**locals()) + '', definition={'type': 'string'}, rule='type')
        if 'heads' in data_keys:
            data_keys.remove('heads')
            data__heads = data['heads']
            if not isinstance(data__heads, (list, tuple)):
                raise JsonSchemaValueException('type', value=data__heads, name='' + (name_prefix or 'data') + '.heads', definition={'type': 'array'}, rule='type')
            data__heads_is_list = isinstance(data__heads, (list, tuple))
            if data__heads_is_list:
                data__heads_len = len(data__heads)
                if data__heads_len > 1000:
                    raise JsonSchemaValueException('maxItems', value=data__heads, name='' + (name_prefix or 'data') + '.heads', definition={'maxItems': 1000}, rule='maxItems')
                for data__heads_x, data__heads_item in enumerate(data__heads):
                    validate___definitions_log_head(data__heads_item, custom_formats, (name_prefix or 'data') + '.heads[{data__heads_x}]'.format(**locals()))
        if 'now' in data_keys:
            data_keys.remove('now')
            data__now = data['now']
            validate___definitions_moment(data__now, custom_formats, (name_prefix or 'data') + '.now')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_fit_factor_body(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['jugs', 'measured_with', 'on']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['jugs', 'measured_with', 'on']}, rule='required')
        data_keys = set(data.keys())
        if 'jugs' in data_keys:
            data_keys.remove('jugs')
            data__jugs = data['jugs']
            if not isinstance(data__jugs, (list, tuple)):
                raise JsonSchemaValueException('type', value=data__jugs, name='' + (name_prefix or 'data') + '.jugs', definition={'type': 'array'}, rule='type')
            data__jugs_is_list = isinstance(data__jugs, (list, tuple))
            if data__jugs_is_list:
                data__jugs_len = len(data__jugs)
                if data__jugs_len < 2:
                    raise JsonSchemaValueException('minItems', value=data__jugs, name='' + (name_prefix or 'data') + '.jugs', definition={'minItems': 2}, rule='minItems')
                if data__jugs_len > 5:
                    raise JsonSchemaValueException('maxItems', value=data__jugs, name='' + (name_prefix or 'data') + '.jugs', definition={'maxItems': 5}, rule='maxItems')
                for data__jugs_x, data__jugs_item in enumerate(data__jugs):
                    validate___definitions_jug_typed(data__jugs_item, custom_formats, (name_prefix or 'data') + '.jugs[{data__jugs_x}]'.format(**locals()))
        if 'measured_with' in data_keys:
            data_keys.remove('measured_with')
            data__measuredwith = data['measured_with']
            if not isinstance(data__measuredwith, str):
                raise JsonSchemaValueException('type', value=data__measuredwith, name='' + (name_prefix or 'data') + '.measured_with', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__measuredwith, str) and data__measuredwith == 'syringe' or (isinstance(data__measuredwith, str) and data__measuredwith == 'jug')):
                raise JsonSchemaValueException('enum', value=data__measuredwith, name='' + (name_prefix or 'data') + '.measured_with', definition={'enum': ['syringe', 'jug']}, rule='enum')
        if 'how' in data_keys:
            data_keys.remove('how')
            data__how = data['how']
            if not isinstance(data__how, str):
                raise JsonSchemaValueException('type', value=data__how, name='' + (name_prefix or 'data') + '.how', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__how, str) and data__how == 'digital' or (isinstance(data__how, str) and data__how == 'optical') or (isinstance(data__how, str) and data__how == 'optical_oily') or (isinstance(data__how, str) and data__how == 'blurred')):
                raise JsonSchemaValueException('enum', value=data__how, name='' + (name_prefix or 'data') + '.how', definition={'enum': ['digital', 'optical', 'optical_oily', 'blurred']}, rule='enum')
        if 'instrument' in data_keys:
            data_keys.remove('instrument')
            data__instrument = data['instrument']
            validate___definitions_instrument_typed(data__instrument, custom_formats, (name_prefix or 'data') + '.instrument')
        if 'fluid_type' in data_keys:
            data_keys.remove('fluid_type')
            data__fluidtype = data['fluid_type']
            if not isinstance(data__fluidtype, str):
                raise JsonSchemaValueException('type', value=data__fluidtype, name='' + (name_prefix or 'data') + '.fluid_type', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__fluidtype, str) and data__fluidtype == 'soluble_oil' or (isinstance(data__fluidtype, str) and data__fluidtype == 'semi_synthetic') or (isinstance(data__fluidtype, str) and data__fluidtype == 'synthetic')):
                raise JsonSchemaValueException('enum', value=data__fluidtype, name='' + (name_prefix or 'data') + '.fluid_type', definition={'enum': ['soluble_oil', 'semi_synthetic', 'synthetic']}, rule='enum')
        if 'last_factor' in data_keys:
            data_keys.remove('last_factor')
            data__lastfactor = data['last_factor']
            validate___definitions_typed(data__lastfactor, custom_formats, (name_prefix or 'data') + '.last_factor')
        if 'on' in data_keys:
            data_keys.remove('on')
            data__on = data['on']
            if not isinstance(data__on, str):
                raise JsonSchemaValueException('type', value=data__on, name='' + (name_prefix or 'data') + '.on', definition={'type': 'string'}, rule='type')
            if isinstance(data__on, str):
                data__on_len = len(data__on)
                if data__on_len > 40:
                    raise JsonSchemaValueException('maxLength', value=data__on, name='' + (name_prefix or 'data') + '.on', definition={'maxLength': 40}, rule='maxLength')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_jug_typed(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['water', 'concentrate', 'shows']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['water', 'concentrate', 'shows']}, rule='required')
        data_keys = set(data.keys())
        if 'water' in data_keys:
            data_keys.remove('water')
            data__water = data['water']
            validate___definitions_typed(data__water, custom_formats, (name_prefix or 'data') + '.water')
        if 'concentrate' in data_keys:
            data_keys.remove('concentrate')
            data__concentrate = data['concentrate']
            validate___definitions_typed(data__concentrate, custom_formats, (name_prefix or 'data') + '.concentrate')
        if 'shows' in data_keys:
            data_keys.remove('shows')
            data__shows = data['shows']
            validate___definitions_typed(data__shows, custom_formats, (name_prefix or 'data') + '.shows')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_due_checks_body(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['lines', 'now']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['lines', 'now']}, rule='required')
        data_keys = set(data.keys())
        if 'lines' in data_keys:
            data_keys.remove('lines')
            data__lines = data['lines']
            if not isinstance(data__lines, (list, tuple)):
                raise JsonSchemaValueException('type', value=data__lines, name='' + (name_prefix or 'data') + '.lines', definition={'type': 'array'}, rule='type')
            data__lines_is_list = isinstance(data__lines, (list, tuple))
            if data__lines_is_list:
                data__lines_len = len(data__lines)
                if data__lines_len > 50000:
                    raise JsonSchemaValueException('maxItems', value=data__lines, name='' + (name_prefix or 'data') + '.lines', definition={'maxItems': 50000}, rule='maxItems')
                for data__lines_x, data__lines_item in enumerate(data__lines):
                    if not isinstance(data__lines_item, str):
                        raise JsonSchemaValueException('type', value=data__lines_item, name='' + (name_prefix or 'data') + '.lines[{data__lines_x}]'.format(**locals()) + '', definition={'type': 'string'}, rule='type')
        if 'now' in data_keys:
            data_keys.remove('now')
            data__now = data['now']
            validate___definitions_moment(data__now, custom_formats, (name_prefix or 'data') + '.now')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_draw_sheet_body(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    try:
        data_is_dict = isinstance(data, dict)
        if data_is_dict:
            data_keys = set(data.keys())
            if 'kind' in data_keys:
                data_keys.remove('kind')
                data__kind = data['kind']
                if not (isinstance(data__kind, str) and data__kind == 'dip_scale'):
                    raise JsonSchemaValueException('const', value=data__kind, name='' + (name_prefix or 'data') + '.kind', definition={'const': 'dip_scale'}, rule='const')
    except (JsonSchemaValueException, JsonSchemaValuesException):
        pass
    else:
        data_is_dict = isinstance(data, dict)
        if data_is_dict:
            data__missing_keys = set(['machine']) - data.keys()
            if data__missing_keys:
                raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['machine']}, rule='required')
    try:
        data_is_dict = isinstance(data, dict)
        if data_is_dict:
            data_keys = set(data.keys())
            if 'kind' in data_keys:
                data_keys.remove('kind')
                data__kind = data['kind']
                if not (isinstance(data__kind, str) and data__kind == 'bucket_scale'):
                    raise JsonSchemaValueException('const', value=data__kind, name='' + (name_prefix or 'data') + '.kind', definition={'const': 'bucket_scale'}, rule='const')
    except (JsonSchemaValueException, JsonSchemaValuesException):
        pass
    else:
        data_is_dict = isinstance(data, dict)
        if data_is_dict:
            data__missing_keys = set(['machine', 'pail_shape']) - data.keys()
            if data__missing_keys:
                raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['machine', 'pail_shape']}, rule='required')
    try:
        data_is_dict = isinstance(data, dict)
        if data_is_dict:
            data_keys = set(data.keys())
            if 'kind' in data_keys:
                data_keys.remove('kind')
                data__kind = data['kind']
                if not (isinstance(data__kind, str) and data__kind == 'machine_card'):
                    raise JsonSchemaValueException('const', value=data__kind, name='' + (name_prefix or 'data') + '.kind', definition={'const': 'machine_card'}, rule='const')
    except (JsonSchemaValueException, JsonSchemaValuesException):
        pass
    else:
        data_is_dict = isinstance(data, dict)
        if data_is_dict:
            data__missing_keys = set(['machine', 'code', 'address']) - data.keys()
            if data__missing_keys:
                raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['machine', 'code', 'address']}, rule='required')
    try:
        data_is_dict = isinstance(data, dict)
        if data_is_dict:
            data_keys = set(data.keys())
            if 'kind' in data_keys:
                data_keys.remove('kind')
                data__kind = data['kind']
                if not (isinstance(data__kind, str) and data__kind == 'recipe_slip'):
                    raise JsonSchemaValueException('const', value=data__kind, name='' + (name_prefix or 'data') + '.kind', definition={'const': 'recipe_slip'}, rule='const')
    except (JsonSchemaValueException, JsonSchemaValuesException):
        pass
    else:
        data_is_dict = isinstance(data, dict)
        if data_is_dict:
            data__missing_keys = set(['machine', 'recipe']) - data.keys()
            if data__missing_keys:
                raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['machine', 'recipe']}, rule='required')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['kind', 'paper']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['kind', 'paper']}, rule='required')
        data_keys = set(data.keys())
        if 'kind' in data_keys:
            data_keys.remove('kind')
            data__kind = data['kind']
            if not isinstance(data__kind, str):
                raise JsonSchemaValueException('type', value=data__kind, name='' + (name_prefix or 'data') + '.kind', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__kind, str) and data__kind == 'dip_scale' or (isinstance(data__kind, str) and data__kind == 'bucket_scale') or (isinstance(data__kind, str) and data__kind == 'machine_card') or (isinstance(data__kind, str) and data__kind == 'log_sheet') or (isinstance(data__kind, str) and data__kind == 'recipe_slip')):
                raise JsonSchemaValueException('enum', value=data__kind, name='' + (name_prefix or 'data') + '.kind', definition={'enum': ['dip_scale', 'bucket_scale', 'machine_card', 'log_sheet', 'recipe_slip']}, rule='enum')
        if 'paper' in data_keys:
            data_keys.remove('paper')
            data__paper = data['paper']
            if not isinstance(data__paper, str):
                raise JsonSchemaValueException('type', value=data__paper, name='' + (name_prefix or 'data') + '.paper', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__paper, str) and data__paper == 'A4' or (isinstance(data__paper, str) and data__paper == 'Letter')):
                raise JsonSchemaValueException('enum', value=data__paper, name='' + (name_prefix or 'data') + '.paper', definition={'enum': ['A4', 'Letter']}, rule='enum')
        if 'machine' in data_keys:
            data_keys.remove('machine')
            data__machine = data['machine']
            validate___definitions_machine_typed(data__machine, custom_formats, (name_prefix or 'data') + '.machine')
        if 'measured_100_mm' in data_keys:
            data_keys.remove('measured_100_mm')
            data__measured100mm = data['measured_100_mm']
            validate___definitions_typed(data__measured100mm, custom_formats, (name_prefix or 'data') + '.measured_100_mm')
        if 'code' in data_keys:
            data_keys.remove('code')
            data__code = data['code']
            if not isinstance(data__code, str):
                raise JsonSchemaValueException('type', value=data__code, name='' + (name_prefix or 'data') + '.code', definition={'type': 'string'}, rule='type')
            if isinstance(data__code, str):
                data__code_len = len(data__code)
                if data__code_len > 40:
                    raise JsonSchemaValueException('maxLength', value=data__code, name='' + (name_prefix or 'data') + '.code', definition={'maxLength': 40}, rule='maxLength')
        if 'address' in data_keys:
            data_keys.remove('address')
            data__address = data['address']
            if not isinstance(data__address, str):
                raise JsonSchemaValueException('type', value=data__address, name='' + (name_prefix or 'data') + '.address', definition={'type': 'string'}, rule='type')
            if isinstance(data__address, str):
                data__address_len = len(data__address)
                if data__address_len > 120:
                    raise JsonSchemaValueException('maxLength', value=data__address, name='' + (name_prefix or 'data') + '.address', definition={'maxLength': 120}, rule='maxLength')
        if 'circuit_volume' in data_keys:
            data_keys.remove('circuit_volume')
            data__circuitvolume = data['circuit_volume']
            validate___definitions_typed(data__circuitvolume, custom_formats, (name_prefix or 'data') + '.circuit_volume')
        if 'calibrated_on' in data_keys:
            data_keys.remove('calibrated_on')
            data__calibratedon = data['calibrated_on']
            if not isinstance(data__calibratedon, str):
                raise JsonSchemaValueException('type', value=data__calibratedon, name='' + (name_prefix or 'data') + '.calibrated_on', definition={'type': 'string'}, rule='type')
            if isinstance(data__calibratedon, str):
                data__calibratedon_len = len(data__calibratedon)
                if data__calibratedon_len > 40:
                    raise JsonSchemaValueException('maxLength', value=data__calibratedon, name='' + (name_prefix or 'data') + '.calibrated_on', definition={'maxLength': 40}, rule='maxLength')
        if 'pail_shape' in data_keys:
            data_keys.remove('pail_shape')
            data__pailshape = data['pail_shape']
            validate___definitions_pail_shape_typed(data__pailshape, custom_formats, (name_prefix or 'data') + '.pail_shape')
        if 'buckets' in data_keys:
            data_keys.remove('buckets')
            data__buckets = data['buckets']
            if not isinstance(data__buckets, (list, tuple)):
                raise JsonSchemaValueException('type', value=data__buckets, name='' + (name_prefix or 'data') + '.buckets', definition={'type': 'array'}, rule='type')
            data__buckets_is_list = isinstance(data__buckets, (list, tuple))
            if data__buckets_is_list:
                data__buckets_len = len(data__buckets)
                if data__buckets_len < 1:
                    raise JsonSchemaValueException('minItems', value=data__buckets, name='' + (name_prefix or 'data') + '.buckets', definition={'minItems': 1}, rule='minItems')
                if data__buckets_len > 3:
                    raise JsonSchemaValueException('maxItems', value=data__buckets, name='' + (name_prefix or 'data') + '.buckets', definition={'maxItems': 3}, rule='maxItems')
                for data__buckets_x, data__buckets_item in enumerate(data__buckets):
                    validate___definitions_usual_bucket_typed(data__buckets_item, custom_formats, (name_prefix or 'data') + '.buckets[{data__buckets_x}]'.format(**locals()))
        if 'recipe' in data_keys:
            data_keys.remove('recipe')
            data__recipe = data['recipe']
            validate___definitions_slip_recipe(data__recipe, custom_formats, (name_prefix or 'data') + '.recipe')
        if 'when' in data_keys:
            data_keys.remove('when')
            data__when = data['when']
            if not isinstance(data__when, str):
                raise JsonSchemaValueException('type', value=data__when, name='' + (name_prefix or 'data') + '.when', definition={'type': 'string'}, rule='type')
            if isinstance(data__when, str):
                data__when_len = len(data__when)
                if data__when_len > 60:
                    raise JsonSchemaValueException('maxLength', value=data__when, name='' + (name_prefix or 'data') + '.when', definition={'maxLength': 60}, rule='maxLength')
        if 'words' in data_keys:
            data_keys.remove('words')
            data__words = data['words']
            if not isinstance(data__words, dict):
                raise JsonSchemaValueException('type', value=data__words, name='' + (name_prefix or 'data') + '.words', definition={'type': 'object'}, rule='type')
            data__words_is_dict = isinstance(data__words, dict)
            if data__words_is_dict:
                data__words_keys = set(data__words.keys())
                for data__words_key in data__words_keys:
                    if data__words_key not in []:
                        data__words_value = data__words.get(data__words_key)
                        if not isinstance(data__words_value, str):
                            raise JsonSchemaValueException('type', value=data__words_value, name='' + (name_prefix or 'data') + '.words.{data__words_key}'.format(**locals()) + '', definition={'type': 'string'}, rule='type')
                        if isinstance(data__words_value, str):
                            data__words_value_len = len(data__words_value)
                            if data__words_value_len > 300:
                                raise JsonSchemaValueException('maxLength', value=data__words_value, name='' + (name_prefix or 'data') + '.words.{data__words_key}'.format(**locals()) + '', definition={'maxLength': 300}, rule='maxLength')
        if 'decimal_sign' in data_keys:
            data_keys.remove('decimal_sign')
            data__decimalsign = data['decimal_sign']
            if not isinstance(data__decimalsign, str):
                raise JsonSchemaValueException('type', value=data__decimalsign, name='' + (name_prefix or 'data') + '.decimal_sign', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__decimalsign, str) and data__decimalsign == '.' or (isinstance(data__decimalsign, str) and data__decimalsign == ',')):
                raise JsonSchemaValueException('enum', value=data__decimalsign, name='' + (name_prefix or 'data') + '.decimal_sign', definition={'enum': ['.', ',']}, rule='enum')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_slip_recipe(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['pours', 'strength', 'low', 'high', 'volume', 'cautions']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['pours', 'strength', 'low', 'high', 'volume', 'cautions']}, rule='required')
        data_keys = set(data.keys())
        if 'depth' in data_keys:
            data_keys.remove('depth')
            data__depth = data['depth']
            validate___definitions_shown(data__depth, custom_formats, (name_prefix or 'data') + '.depth')
        if 'reading' in data_keys:
            data_keys.remove('reading')
            data__reading = data['reading']
            validate___definitions_shown(data__reading, custom_formats, (name_prefix or 'data') + '.reading')
        if 'now_strength' in data_keys:
            data_keys.remove('now_strength')
            data__nowstrength = data['now_strength']
            validate___definitions_shown(data__nowstrength, custom_formats, (name_prefix or 'data') + '.now_strength')
        if 'now_volume' in data_keys:
            data_keys.remove('now_volume')
            data__nowvolume = data['now_volume']
            validate___definitions_shown(data__nowvolume, custom_formats, (name_prefix or 'data') + '.now_volume')
        if 'take_out' in data_keys:
            data_keys.remove('take_out')
            data__takeout = data['take_out']
            validate___definitions_shown(data__takeout, custom_formats, (name_prefix or 'data') + '.take_out')
        if 'pours' in data_keys:
            data_keys.remove('pours')
            data__pours = data['pours']
            if not isinstance(data__pours, (list, tuple)):
                raise JsonSchemaValueException('type', value=data__pours, name='' + (name_prefix or 'data') + '.pours', definition={'type': 'array'}, rule='type')
            data__pours_is_list = isinstance(data__pours, (list, tuple))
            if data__pours_is_list:
                data__pours_len = len(data__pours)
                if data__pours_len > 20:
                    raise JsonSchemaValueException('maxItems', value=data__pours, name='' + (name_prefix or 'data') + '.pours', definition={'maxItems': 20}, rule='maxItems')
                for data__pours_x, data__pours_item in enumerate(data__pours):
                    validate___definitions_pour_shown(data__pours_item, custom_formats, (name_prefix or 'data') + '.pours[{data__pours_x}]'.format(**locals()))
        if 'strength' in data_keys:
            data_keys.remove('strength')
            data__strength = data['strength']
            validate___definitions_shown(data__strength, custom_formats, (name_prefix or 'data') + '.strength')
        if 'low' in data_keys:
            data_keys.remove('low')
            data__low = data['low']
            validate___definitions_shown(data__low, custom_formats, (name_prefix or 'data') + '.low')
        if 'high' in data_keys:
            data_keys.remove('high')
            data__high = data['high']
            validate___definitions_shown(data__high, custom_formats, (name_prefix or 'data') + '.high')
        if 'volume' in data_keys:
            data_keys.remove('volume')
            data__volume = data['volume']
            validate___definitions_shown(data__volume, custom_formats, (name_prefix or 'data') + '.volume')
        if 'cautions' in data_keys:
            data_keys.remove('cautions')
            data__cautions = data['cautions']
            if not isinstance(data__cautions, (list, tuple)):
                raise JsonSchemaValueException('type', value=data__cautions, name='' + (name_prefix or 'data') + '.cautions', definition={'type': 'array'}, rule='type')
            data__cautions_is_list = isinstance(data__cautions, (list, tuple))
            if data__cautions_is_list:
                data__cautions_len = len(data__cautions)
                if data__cautions_len > 16:
                    raise JsonSchemaValueException('maxItems', value=data__cautions, name='' + (name_prefix or 'data') + '.cautions', definition={'maxItems': 16}, rule='maxItems')
                for data__cautions_x, data__cautions_item in enumerate(data__cautions):
                    if not isinstance(data__cautions_item, str):
                        raise JsonSchemaValueException('type', value=data__cautions_item, name='' + (name_prefix or 'data') + '.cautions[{data__cautions_x}]'.format(**locals()) + '', definition={'type': 'string'}, rule='type')
                    if isinstance(data__cautions_item, str):
                        data__cautions_item_len = len(data__cautions_item)
                        if data__cautions_item_len > 300:
                            raise JsonSchemaValueException('maxLength', value=data__cautions_item, name='' + (name_prefix or 'data') + '.cautions[{data__cautions_x}]'.format(**locals()) + '', definition={'maxLength': 300}, rule='maxLength')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_pour_shown(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['count', 'water', 'concentrate', 'total', 'strength', 'weight', 'water_share', 'concentrate_share']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['count', 'water', 'concentrate', 'total', 'strength', 'weight', 'water_share', 'concentrate_share']}, rule='required')
        data_keys = set(data.keys())
        if 'count' in data_keys:
            data_keys.remove('count')
            data__count = data['count']
            if not isinstance(data__count, int) and (not (isinstance(data__count, float) and data__count.is_integer())) or isinstance(data__count, bool):
                raise JsonSchemaValueException('type', value=data__count, name='' + (name_prefix or 'data') + '.count', definition={'type': 'integer'}, rule='type')
        if 'water' in data_keys:
            data_keys.remove('water')
            data__water = data['water']
            validate___definitions_shown(data__water, custom_formats, (name_prefix or 'data') + '.water')
        if 'concentrate' in data_keys:
            data_keys.remove('concentrate')
            data__concentrate = data['concentrate']
            validate___definitions_shown(data__concentrate, custom_formats, (name_prefix or 'data') + '.concentrate')
        if 'total' in data_keys:
            data_keys.remove('total')
            data__total = data['total']
            validate___definitions_shown(data__total, custom_formats, (name_prefix or 'data') + '.total')
        if 'strength' in data_keys:
            data_keys.remove('strength')
            data__strength = data['strength']
            validate___definitions_shown(data__strength, custom_formats, (name_prefix or 'data') + '.strength')
        if 'weight' in data_keys:
            data_keys.remove('weight')
            data__weight = data['weight']
            validate___definitions_shown(data__weight, custom_formats, (name_prefix or 'data') + '.weight')
        if 'water_share' in data_keys:
            data_keys.remove('water_share')
            data__watershare = data['water_share']
            if not isinstance(data__watershare, (int, float, Decimal)) or isinstance(data__watershare, bool):
                raise JsonSchemaValueException('type', value=data__watershare, name='' + (name_prefix or 'data') + '.water_share', definition={'type': 'number'}, rule='type')
        if 'concentrate_share' in data_keys:
            data_keys.remove('concentrate_share')
            data__concentrateshare = data['concentrate_share']
            if not isinstance(data__concentrateshare, (int, float, Decimal)) or isinstance(data__concentrateshare, bool):
                raise JsonSchemaValueException('type', value=data__concentrateshare, name='' + (name_prefix or 'data') + '.concentrate_share', definition={'type': 'number'}, rule='type')
        if 'fluid' in data_keys:
            data_keys.remove('fluid')
            data__fluid = data['fluid']
            validate___definitions_shown(data__fluid, custom_formats, (name_prefix or 'data') + '.fluid')
        if 'jugs' in data_keys:
            data_keys.remove('jugs')
            data__jugs = data['jugs']
            if not isinstance(data__jugs, dict):
                raise JsonSchemaValueException('type', value=data__jugs, name='' + (name_prefix or 'data') + '.jugs', definition={'type': 'object'}, rule='type')
            data__jugs_is_dict = isinstance(data__jugs, dict)
            if data__jugs_is_dict:
                data__jugs__missing_keys = set(['count', 'rest']) - data__jugs.keys()
                if data__jugs__missing_keys:
                    raise JsonSchemaValueException('required', value=data__jugs, name='' + (name_prefix or 'data') + '.jugs', definition={'required': ['count', 'rest']}, rule='required')
                data__jugs_keys = set(data__jugs.keys())
                if 'count' in data__jugs_keys:
                    data__jugs_keys.remove('count')
                    data__jugs__count = data__jugs['count']
                    if not isinstance(data__jugs__count, int) and (not (isinstance(data__jugs__count, float) and data__jugs__count.is_integer())) or isinstance(data__jugs__count, bool):
                        raise JsonSchemaValueException('type', value=data__jugs__count, name='' + (name_prefix or 'data') + '.jugs.count', definition={'type': 'integer'}, rule='type')
                    if isinstance(data__jugs__count, (int, float, Decimal)) and (not isinstance(data__jugs__count, bool)):
                        if data__jugs__count < 1:
                            raise JsonSchemaValueException('minimum', value=data__jugs__count, name='' + (name_prefix or 'data') + '.jugs.count', definition={'minimum': 1}, rule='minimum')
                if 'rest' in data__jugs_keys:
                    data__jugs_keys.remove('rest')
                    data__jugs__rest = data__jugs['rest']
                    validate___definitions_shown(data__jugs__rest, custom_formats, (name_prefix or 'data') + '.jugs.rest')
                if data__jugs_keys:
                    raise JsonSchemaValueException('' + (name_prefix or 'data') + '.jugs must not contain ' + str(data__jugs_keys) + ' properties', value=data__jugs, name='' + (name_prefix or 'data') + '.jugs', definition={'additionalProperties': False}, rule='additionalProperties')
        if 'pail_mark' in data_keys:
            data_keys.remove('pail_mark')
            data__pailmark = data['pail_mark']
            validate___definitions_shown(data__pailmark, custom_formats, (name_prefix or 'data') + '.pail_mark')
        if 'kind' in data_keys:
            data_keys.remove('kind')
            data__kind = data['kind']
            if not isinstance(data__kind, str):
                raise JsonSchemaValueException('type', value=data__kind, name='' + (name_prefix or 'data') + '.kind', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__kind, str) and data__kind == 'own_fluid' or (isinstance(data__kind, str) and data__kind == 'ready_mix')):
                raise JsonSchemaValueException('enum', value=data__kind, name='' + (name_prefix or 'data') + '.kind', definition={'enum': ['own_fluid', 'ready_mix']}, rule='enum')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_shown(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['value', 'decimals', 'unit']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['value', 'decimals', 'unit']}, rule='required')
        data_keys = set(data.keys())
        if 'value' in data_keys:
            data_keys.remove('value')
            data__value = data['value']
            if not isinstance(data__value, (int, float, Decimal)) or isinstance(data__value, bool):
                raise JsonSchemaValueException('type', value=data__value, name='' + (name_prefix or 'data') + '.value', definition={'type': 'number'}, rule='type')
        if 'decimals' in data_keys:
            data_keys.remove('decimals')
            data__decimals = data['decimals']
            if not isinstance(data__decimals, int) and (not (isinstance(data__decimals, float) and data__decimals.is_integer())) or isinstance(data__decimals, bool):
                raise JsonSchemaValueException('type', value=data__decimals, name='' + (name_prefix or 'data') + '.decimals', definition={'type': 'integer'}, rule='type')
            if isinstance(data__decimals, (int, float, Decimal)) and (not isinstance(data__decimals, bool)):
                if data__decimals < 0:
                    raise JsonSchemaValueException('minimum', value=data__decimals, name='' + (name_prefix or 'data') + '.decimals', definition={'minimum': 0}, rule='minimum')
                if data__decimals > 9:
                    raise JsonSchemaValueException('maximum', value=data__decimals, name='' + (name_prefix or 'data') + '.decimals', definition={'maximum': 9}, rule='maximum')
        if 'unit' in data_keys:
            data_keys.remove('unit')
            data__unit = data['unit']
            validate___definitions_unit(data__unit, custom_formats, (name_prefix or 'data') + '.unit')
        if 'fraction' in data_keys:
            data_keys.remove('fraction')
            data__fraction = data['fraction']
            validate___definitions_fraction(data__fraction, custom_formats, (name_prefix or 'data') + '.fraction')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_fraction(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['whole', 'numerator', 'denominator']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['whole', 'numerator', 'denominator']}, rule='required')
        data_keys = set(data.keys())
        if 'whole' in data_keys:
            data_keys.remove('whole')
            data__whole = data['whole']
            if not isinstance(data__whole, int) and (not (isinstance(data__whole, float) and data__whole.is_integer())) or isinstance(data__whole, bool):
                raise JsonSchemaValueException('type', value=data__whole, name='' + (name_prefix or 'data') + '.whole', definition={'type': 'integer'}, rule='type')
        if 'numerator' in data_keys:
            data_keys.remove('numerator')
            data__numerator = data['numerator']
            if not isinstance(data__numerator, int) and (not (isinstance(data__numerator, float) and data__numerator.is_integer())) or isinstance(data__numerator, bool):
                raise JsonSchemaValueException('type', value=data__numerator, name='' + (name_prefix or 'data') + '.numerator', definition={'type': 'integer'}, rule='type')
            if isinstance(data__numerator, (int, float, Decimal)) and (not isinstance(data__numerator, bool)):
                if data__numerator < 1:
                    raise JsonSchemaValueException('minimum', value=data__numerator, name='' + (name_prefix or 'data') + '.numerator', definition={'minimum': 1}, rule='minimum')
        if 'denominator' in data_keys:
            data_keys.remove('denominator')
            data__denominator = data['denominator']
            if not isinstance(data__denominator, int) and (not (isinstance(data__denominator, float) and data__denominator.is_integer())) or isinstance(data__denominator, bool):
                raise JsonSchemaValueException('type', value=data__denominator, name='' + (name_prefix or 'data') + '.denominator', definition={'type': 'integer'}, rule='type')
            if isinstance(data__denominator, (int, float, Decimal)) and (not isinstance(data__denominator, bool)):
                if data__denominator < 2:
                    raise JsonSchemaValueException('minimum', value=data__denominator, name='' + (name_prefix or 'data') + '.denominator', definition={'minimum': 2}, rule='minimum')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_usual_bucket_typed(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['water', 'concentrate']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['water', 'concentrate']}, rule='required')
        data_keys = set(data.keys())
        if 'water' in data_keys:
            data_keys.remove('water')
            data__water = data['water']
            validate___definitions_typed(data__water, custom_formats, (name_prefix or 'data') + '.water')
        if 'concentrate' in data_keys:
            data_keys.remove('concentrate')
            data__concentrate = data['concentrate']
            validate___definitions_typed(data__concentrate, custom_formats, (name_prefix or 'data') + '.concentrate')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_pail_shape_typed(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    try:
        data_is_dict = isinstance(data, dict)
        if data_is_dict:
            data_keys = set(data.keys())
            if 'kind' in data_keys:
                data_keys.remove('kind')
                data__kind = data['kind']
                if not (isinstance(data__kind, str) and data__kind == 'diameters'):
                    raise JsonSchemaValueException('const', value=data__kind, name='' + (name_prefix or 'data') + '.kind', definition={'const': 'diameters'}, rule='const')
    except (JsonSchemaValueException, JsonSchemaValuesException):
        pass
    else:
        data_is_dict = isinstance(data, dict)
        if data_is_dict:
            data__missing_keys = set(['floor_diameter', 'brim_diameter', 'height']) - data.keys()
            if data__missing_keys:
                raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['floor_diameter', 'brim_diameter', 'height']}, rule='required')
    try:
        data_is_dict = isinstance(data, dict)
        if data_is_dict:
            data_keys = set(data.keys())
            if 'kind' in data_keys:
                data_keys.remove('kind')
                data__kind = data['kind']
                if not (isinstance(data__kind, str) and data__kind == 'fills'):
                    raise JsonSchemaValueException('const', value=data__kind, name='' + (name_prefix or 'data') + '.kind', definition={'const': 'fills'}, rule='const')
    except (JsonSchemaValueException, JsonSchemaValuesException):
        pass
    else:
        data_is_dict = isinstance(data, dict)
        if data_is_dict:
            data__missing_keys = set(['fills']) - data.keys()
            if data__missing_keys:
                raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['fills']}, rule='required')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['kind']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['kind']}, rule='required')
        data_keys = set(data.keys())
        if 'kind' in data_keys:
            data_keys.remove('kind')
            data__kind = data['kind']
            if not isinstance(data__kind, str):
                raise JsonSchemaValueException('type', value=data__kind, name='' + (name_prefix or 'data') + '.kind', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__kind, str) and data__kind == 'diameters' or (isinstance(data__kind, str) and data__kind == 'fills')):
                raise JsonSchemaValueException('enum', value=data__kind, name='' + (name_prefix or 'data') + '.kind', definition={'enum': ['diameters', 'fills']}, rule='enum')
        if 'floor_diameter' in data_keys:
            data_keys.remove('floor_diameter')
            data__floordiameter = data['floor_diameter']
            validate___definitions_typed(data__floordiameter, custom_formats, (name_prefix or 'data') + '.floor_diameter')
        if 'brim_diameter' in data_keys:
            data_keys.remove('brim_diameter')
            data__brimdiameter = data['brim_diameter']
            validate___definitions_typed(data__brimdiameter, custom_formats, (name_prefix or 'data') + '.brim_diameter')
        if 'height' in data_keys:
            data_keys.remove('height')
            data__height = data['height']
            validate___definitions_typed(data__height, custom_formats, (name_prefix or 'data') + '.height')
        if 'fills' in data_keys:
            data_keys.remove('fills')
            data__fills = data['fills']
            if not isinstance(data__fills, (list, tuple)):
                raise JsonSchemaValueException('type', value=data__fills, name='' + (name_prefix or 'data') + '.fills', definition={'type': 'array'}, rule='type')
            data__fills_is_list = isinstance(data__fills, (list, tuple))
            if data__fills_is_list:
                data__fills_len = len(data__fills)
                if data__fills_len < 2:
                    raise JsonSchemaValueException('minItems', value=data__fills, name='' + (name_prefix or 'data') + '.fills', definition={'minItems': 2}, rule='minItems')
                if data__fills_len > 2:
                    raise JsonSchemaValueException('maxItems', value=data__fills, name='' + (name_prefix or 'data') + '.fills', definition={'maxItems': 2}, rule='maxItems')
                for data__fills_x, data__fills_item in enumerate(data__fills):
                    validate___definitions_fill_typed(data__fills_item, custom_formats, (name_prefix or 'data') + '.fills[{data__fills_x}]'.format(**locals()))
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_fill_typed(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['depth', 'volume']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['depth', 'volume']}, rule='required')
        data_keys = set(data.keys())
        if 'depth' in data_keys:
            data_keys.remove('depth')
            data__depth = data['depth']
            validate___definitions_typed(data__depth, custom_formats, (name_prefix or 'data') + '.depth')
        if 'volume' in data_keys:
            data_keys.remove('volume')
            data__volume = data['volume']
            validate___definitions_typed(data__volume, custom_formats, (name_prefix or 'data') + '.volume')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_describe_body(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set([]) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': []}, rule='required')
        data_keys = set(data.keys())
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_deal_practice_body(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['level', 'number']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['level', 'number']}, rule='required')
        data_keys = set(data.keys())
        if 'level' in data_keys:
            data_keys.remove('level')
            data__level = data['level']
            validate___definitions_practice_level(data__level, custom_formats, (name_prefix or 'data') + '.level')
        if 'number' in data_keys:
            data_keys.remove('number')
            data__number = data['number']
            validate___definitions_typed(data__number, custom_formats, (name_prefix or 'data') + '.number')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_practice_level(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, str):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'string'}, rule='type')
    if not (isinstance(data, str) and data == 'alike' or (isinstance(data, str) and data == 'rich') or (isinstance(data, str) and data == 'full') or (isinstance(data, str) and data == 'band')):
        raise JsonSchemaValueException('enum', value=data, name='' + (name_prefix or 'data') + '', definition={'enum': ['alike', 'rich', 'full', 'band']}, rule='enum')
    return data

def validate___definitions_calibrate_sump_body(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['full_depth']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['full_depth']}, rule='required')
        data_keys = set(data.keys())
        if 'full_depth' in data_keys:
            data_keys.remove('full_depth')
            data__fulldepth = data['full_depth']
            validate___definitions_typed(data__fulldepth, custom_formats, (name_prefix or 'data') + '.full_depth')
        if 'rim_depth' in data_keys:
            data_keys.remove('rim_depth')
            data__rimdepth = data['rim_depth']
            validate___definitions_typed(data__rimdepth, custom_formats, (name_prefix or 'data') + '.rim_depth')
        if 'start' in data_keys:
            data_keys.remove('start')
            data__start = data['start']
            if not isinstance(data__start, str):
                raise JsonSchemaValueException('type', value=data__start, name='' + (name_prefix or 'data') + '.start', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__start, str) and data__start == 'empty' or (isinstance(data__start, str) and data__start == 'rest')):
                raise JsonSchemaValueException('enum', value=data__start, name='' + (name_prefix or 'data') + '.start', definition={'enum': ['empty', 'rest']}, rule='enum')
        if 'start_depth' in data_keys:
            data_keys.remove('start_depth')
            data__startdepth = data['start_depth']
            validate___definitions_typed(data__startdepth, custom_formats, (name_prefix or 'data') + '.start_depth')
        if 'steps' in data_keys:
            data_keys.remove('steps')
            data__steps = data['steps']
            if not isinstance(data__steps, (list, tuple)):
                raise JsonSchemaValueException('type', value=data__steps, name='' + (name_prefix or 'data') + '.steps', definition={'type': 'array'}, rule='type')
            data__steps_is_list = isinstance(data__steps, (list, tuple))
            if data__steps_is_list:
                data__steps_len = len(data__steps)
                if data__steps_len > 60:
                    raise JsonSchemaValueException('maxItems', value=data__steps, name='' + (name_prefix or 'data') + '.steps', definition={'maxItems': 60}, rule='maxItems')
                for data__steps_x, data__steps_item in enumerate(data__steps):
                    if not isinstance(data__steps_item, dict):
                        raise JsonSchemaValueException('type', value=data__steps_item, name='' + (name_prefix or 'data') + '.steps[{data__steps_x}]'.format(**locals()) + '', definition={'type': 'object'}, rule='type')
                    data__steps_item_is_dict = isinstance(data__steps_item, dict)
                    if data__steps_item_is_dict:
                        data__steps_item__missing_keys = set(['poured', 'depth']) - data__steps_item.keys()
                        if data__steps_item__missing_keys:
                            raise JsonSchemaValueException('required', value=data__steps_item, name='' + (name_prefix or 'data') + '.steps[{data__steps_x}]'.format(**locals()) + '', definition={'required': ['poured', 'depth']}, rule='required')
                        data__steps_item_keys = set(data__steps_item.keys())
                        if 'poured' in data__steps_item_keys:
                            data__steps_item_keys.remove('poured')
                            data__steps_item__poured = data__steps_item['poured']
                            validate___definitions_typed(data__steps_item__poured, custom_formats, (name_prefix or 'data') + '.steps[{data__steps_x}].poured'.format(**locals()))
                        if 'depth' in data__steps_item_keys:
                            data__steps_item_keys.remove('depth')
                            data__steps_item__depth = data__steps_item['depth']
                            validate___definitions_typed(data__steps_item__depth, custom_formats, (name_prefix or 'data') + '.steps[{data__steps_x}].depth'.format(**locals()))
                        if 'at' in data__steps_item_keys:
                            data__steps_item_keys.remove('at')
                            data__steps_item__at = data__steps_item['at']
                            if not isinstance(data__steps_item__at, str):
                                raise JsonSchemaValueException('type', value=data__steps_item__at, name='' + (name_prefix or 'data') + '.steps[{data__steps_x}].at'.format(**locals()) + '', definition={'type': 'string'}, rule='type')
                            if isinstance(data__steps_item__at, str):
                                data__steps_item__at_len = len(data__steps_item__at)
                                if data__steps_item__at_len > 40:
                                    raise JsonSchemaValueException('maxLength', value=data__steps_item__at, name='' + (name_prefix or 'data') + '.steps[{data__steps_x}].at'.format(**locals()) + '', definition={'maxLength': 40}, rule='maxLength')
                        if data__steps_item_keys:
                            raise JsonSchemaValueException('' + (name_prefix or 'data') + '.steps[{data__steps_x}]'.format(**locals()) + ' must not contain ' + str(data__steps_item_keys) + ' properties', value=data__steps_item, name='' + (name_prefix or 'data') + '.steps[{data__steps_x}]'.format(**locals()) + '', definition={'additionalProperties': False}, rule='additionalProperties')
        if 'pairs' in data_keys:
            data_keys.remove('pairs')
            data__pairs = data['pairs']
            if not isinstance(data__pairs, (list, tuple)):
                raise JsonSchemaValueException('type', value=data__pairs, name='' + (name_prefix or 'data') + '.pairs', definition={'type': 'array'}, rule='type')
            data__pairs_is_list = isinstance(data__pairs, (list, tuple))
            if data__pairs_is_list:
                data__pairs_len = len(data__pairs)
                if data__pairs_len > 60:
                    raise JsonSchemaValueException('maxItems', value=data__pairs, name='' + (name_prefix or 'data') + '.pairs', definition={'maxItems': 60}, rule='maxItems')
                for data__pairs_x, data__pairs_item in enumerate(data__pairs):
                    if not isinstance(data__pairs_item, dict):
                        raise JsonSchemaValueException('type', value=data__pairs_item, name='' + (name_prefix or 'data') + '.pairs[{data__pairs_x}]'.format(**locals()) + '', definition={'type': 'object'}, rule='type')
                    data__pairs_item_is_dict = isinstance(data__pairs_item, dict)
                    if data__pairs_item_is_dict:
                        data__pairs_item__missing_keys = set(['before', 'poured', 'after']) - data__pairs_item.keys()
                        if data__pairs_item__missing_keys:
                            raise JsonSchemaValueException('required', value=data__pairs_item, name='' + (name_prefix or 'data') + '.pairs[{data__pairs_x}]'.format(**locals()) + '', definition={'required': ['before', 'poured', 'after']}, rule='required')
                        data__pairs_item_keys = set(data__pairs_item.keys())
                        if 'before' in data__pairs_item_keys:
                            data__pairs_item_keys.remove('before')
                            data__pairs_item__before = data__pairs_item['before']
                            validate___definitions_typed(data__pairs_item__before, custom_formats, (name_prefix or 'data') + '.pairs[{data__pairs_x}].before'.format(**locals()))
                        if 'poured' in data__pairs_item_keys:
                            data__pairs_item_keys.remove('poured')
                            data__pairs_item__poured = data__pairs_item['poured']
                            validate___definitions_typed(data__pairs_item__poured, custom_formats, (name_prefix or 'data') + '.pairs[{data__pairs_x}].poured'.format(**locals()))
                        if 'after' in data__pairs_item_keys:
                            data__pairs_item_keys.remove('after')
                            data__pairs_item__after = data__pairs_item['after']
                            validate___definitions_typed(data__pairs_item__after, custom_formats, (name_prefix or 'data') + '.pairs[{data__pairs_x}].after'.format(**locals()))
                        if data__pairs_item_keys:
                            raise JsonSchemaValueException('' + (name_prefix or 'data') + '.pairs[{data__pairs_x}]'.format(**locals()) + ' must not contain ' + str(data__pairs_item_keys) + ' properties', value=data__pairs_item, name='' + (name_prefix or 'data') + '.pairs[{data__pairs_x}]'.format(**locals()) + '', definition={'additionalProperties': False}, rule='additionalProperties')
        if 'vessel_known_by' in data_keys:
            data_keys.remove('vessel_known_by')
            data__vesselknownby = data['vessel_known_by']
            if not isinstance(data__vesselknownby, str):
                raise JsonSchemaValueException('type', value=data__vesselknownby, name='' + (name_prefix or 'data') + '.vessel_known_by', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__vesselknownby, str) and data__vesselknownby == 'marks' or (isinstance(data__vesselknownby, str) and data__vesselknownby == 'checked')):
                raise JsonSchemaValueException('enum', value=data__vesselknownby, name='' + (name_prefix or 'data') + '.vessel_known_by', definition={'enum': ['marks', 'checked']}, rule='enum')
        if 'how' in data_keys:
            data_keys.remove('how')
            data__how = data['how']
            if not isinstance(data__how, str):
                raise JsonSchemaValueException('type', value=data__how, name='' + (name_prefix or 'data') + '.how', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__how, str) and data__how == 'hard_floor' or (isinstance(data__how, str) and data__how == 'through_slot') or (isinstance(data__how, str) and data__how == 'running') or (isinstance(data__how, str) and data__how == 'chips') or (isinstance(data__how, str) and data__how == 'unsure')):
                raise JsonSchemaValueException('enum', value=data__how, name='' + (name_prefix or 'data') + '.how', definition={'enum': ['hard_floor', 'through_slot', 'running', 'chips', 'unsure']}, rule='enum')
        if 'dip_u' in data_keys:
            data_keys.remove('dip_u')
            data__dipu = data['dip_u']
            validate___definitions_typed(data__dipu, custom_formats, (name_prefix or 'data') + '.dip_u')
        if 'maker_volume' in data_keys:
            data_keys.remove('maker_volume')
            data__makervolume = data['maker_volume']
            validate___definitions_typed(data__makervolume, custom_formats, (name_prefix or 'data') + '.maker_volume')
        if 'dip_from' in data_keys:
            data_keys.remove('dip_from')
            data__dipfrom = data['dip_from']
            if not isinstance(data__dipfrom, str):
                raise JsonSchemaValueException('type', value=data__dipfrom, name='' + (name_prefix or 'data') + '.dip_from', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__dipfrom, str) and data__dipfrom == 'bottom' or (isinstance(data__dipfrom, str) and data__dipfrom == 'top')):
                raise JsonSchemaValueException('enum', value=data__dipfrom, name='' + (name_prefix or 'data') + '.dip_from', definition={'enum': ['bottom', 'top']}, rule='enum')
        if 'reference_height' in data_keys:
            data_keys.remove('reference_height')
            data__referenceheight = data['reference_height']
            validate___definitions_typed(data__referenceheight, custom_formats, (name_prefix or 'data') + '.reference_height')
        if 'zero_offset' in data_keys:
            data_keys.remove('zero_offset')
            data__zerooffset = data['zero_offset']
            validate___definitions_typed(data__zerooffset, custom_formats, (name_prefix or 'data') + '.zero_offset')
        if 'units' in data_keys:
            data_keys.remove('units')
            data__units = data['units']
            validate___definitions_units(data__units, custom_formats, (name_prefix or 'data') + '.units')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_assess_sump_body(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['sump']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['sump']}, rule='required')
        data_keys = set(data.keys())
        if 'sump' in data_keys:
            data_keys.remove('sump')
            data__sump = data['sump']
            validate___definitions_sump_typed(data__sump, custom_formats, (name_prefix or 'data') + '.sump')
        if 'fluid' in data_keys:
            data_keys.remove('fluid')
            data__fluid = data['fluid']
            validate___definitions_fluid_typed(data__fluid, custom_formats, (name_prefix or 'data') + '.fluid')
        if 'target' in data_keys:
            data_keys.remove('target')
            data__target = data['target']
            validate___definitions_target_typed(data__target, custom_formats, (name_prefix or 'data') + '.target')
        if 'units' in data_keys:
            data_keys.remove('units')
            data__units = data['units']
            validate___definitions_units(data__units, custom_formats, (name_prefix or 'data') + '.units')
        if 'dip' in data_keys:
            data_keys.remove('dip')
            data__dip = data['dip']
            validate___definitions_dip_typed(data__dip, custom_formats, (name_prefix or 'data') + '.dip')
        if 'reading' in data_keys:
            data_keys.remove('reading')
            data__reading = data['reading']
            validate___definitions_reading_typed(data__reading, custom_formats, (name_prefix or 'data') + '.reading')
        if 'instrument' in data_keys:
            data_keys.remove('instrument')
            data__instrument = data['instrument']
            validate___definitions_instrument_typed(data__instrument, custom_formats, (name_prefix or 'data') + '.instrument')
        if 'now' in data_keys:
            data_keys.remove('now')
            data__now = data['now']
            if not isinstance(data__now, str):
                raise JsonSchemaValueException('type', value=data__now, name='' + (name_prefix or 'data') + '.now', definition={'type': 'string'}, rule='type')
            if isinstance(data__now, str):
                data__now_len = len(data__now)
                if data__now_len > 40:
                    raise JsonSchemaValueException('maxLength', value=data__now, name='' + (name_prefix or 'data') + '.now', definition={'maxLength': 40}, rule='maxLength')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_advise_mishap_body(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['mishap']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['mishap']}, rule='required')
        data_keys = set(data.keys())
        if 'mishap' in data_keys:
            data_keys.remove('mishap')
            data__mishap = data['mishap']
            validate___definitions_mishap(data__mishap, custom_formats, (name_prefix or 'data') + '.mishap')
        if 'fluid_type' in data_keys:
            data_keys.remove('fluid_type')
            data__fluidtype = data['fluid_type']
            if not isinstance(data__fluidtype, str):
                raise JsonSchemaValueException('type', value=data__fluidtype, name='' + (name_prefix or 'data') + '.fluid_type', definition={'type': 'string'}, rule='type')
            if not (isinstance(data__fluidtype, str) and data__fluidtype == 'soluble_oil' or (isinstance(data__fluidtype, str) and data__fluidtype == 'semi_synthetic') or (isinstance(data__fluidtype, str) and data__fluidtype == 'synthetic')):
                raise JsonSchemaValueException('enum', value=data__fluidtype, name='' + (name_prefix or 'data') + '.fluid_type', definition={'enum': ['soluble_oil', 'semi_synthetic', 'synthetic']}, rule='enum')
        if 'metals' in data_keys:
            data_keys.remove('metals')
            data__metals = data['metals']
            if not isinstance(data__metals, (list, tuple)):
                raise JsonSchemaValueException('type', value=data__metals, name='' + (name_prefix or 'data') + '.metals', definition={'type': 'array'}, rule='type')
            data__metals_is_list = isinstance(data__metals, (list, tuple))
            if data__metals_is_list:
                data__metals_len = len(data__metals)
                if data__metals_len > 10:
                    raise JsonSchemaValueException('maxItems', value=data__metals, name='' + (name_prefix or 'data') + '.metals', definition={'maxItems': 10}, rule='maxItems')
                for data__metals_x, data__metals_item in enumerate(data__metals):
                    if not isinstance(data__metals_item, str):
                        raise JsonSchemaValueException('type', value=data__metals_item, name='' + (name_prefix or 'data') + '.metals[{data__metals_x}]'.format(**locals()) + '', definition={'type': 'string'}, rule='type')
                    if not (isinstance(data__metals_item, str) and data__metals_item == 'steel' or (isinstance(data__metals_item, str) and data__metals_item == 'cast_iron') or (isinstance(data__metals_item, str) and data__metals_item == 'aluminium') or (isinstance(data__metals_item, str) and data__metals_item == 'copper') or (isinstance(data__metals_item, str) and data__metals_item == 'titanium') or (isinstance(data__metals_item, str) and data__metals_item == 'magnesium') or (isinstance(data__metals_item, str) and data__metals_item == 'other')):
                        raise JsonSchemaValueException('enum', value=data__metals_item, name='' + (name_prefix or 'data') + '.metals[{data__metals_x}]'.format(**locals()) + '', definition={'enum': ['steel', 'cast_iron', 'aluminium', 'copper', 'titanium', 'magnesium', 'other']}, rule='enum')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

def validate___definitions_mishap(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, str):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'string'}, rule='type')
    if not (isinstance(data, str) and data == 'wrong_drum' or (isinstance(data, str) and data == 'neat_poured') or (isinstance(data, str) and data == 'lumpy_bucket') or (isinstance(data, str) and data == 'overfilled') or (isinstance(data, str) and data == 'ran_dry') or (isinstance(data, str) and data == 'split') or (isinstance(data, str) and data == 'cleaner_in_it') or (isinstance(data, str) and data == 'oil_leak')):
        raise JsonSchemaValueException('enum', value=data, name='' + (name_prefix or 'data') + '', definition={'enum': ['wrong_drum', 'neat_poured', 'lumpy_bucket', 'overfilled', 'ran_dry', 'split', 'cleaner_in_it', 'oil_leak']}, rule='enum')
    return data

def validate___definitions_request(data, custom_formats={}, name_prefix=None):
    if not isinstance(data, dict):
        raise JsonSchemaValueException('type', value=data, name='' + (name_prefix or 'data') + '', definition={'type': 'object'}, rule='type')
    data_is_dict = isinstance(data, dict)
    if data_is_dict:
        data__missing_keys = set(['v', 'id', 'op', 'body']) - data.keys()
        if data__missing_keys:
            raise JsonSchemaValueException('required', value=data, name='' + (name_prefix or 'data') + '', definition={'required': ['v', 'id', 'op', 'body']}, rule='required')
        data_keys = set(data.keys())
        if 'v' in data_keys:
            data_keys.remove('v')
            data__v = data['v']
            if not isinstance(data__v, int) and (not (isinstance(data__v, float) and data__v.is_integer())) or isinstance(data__v, bool):
                raise JsonSchemaValueException('type', value=data__v, name='' + (name_prefix or 'data') + '.v', definition={'type': 'integer'}, rule='type')
            if not (isinstance(data__v, (int, float)) and (not isinstance(data__v, bool)) and (data__v == 1)):
                raise JsonSchemaValueException('const', value=data__v, name='' + (name_prefix or 'data') + '.v', definition={'const': 1}, rule='const')
        if 'id' in data_keys:
            data_keys.remove('id')
            data__id = data['id']
            if not isinstance(data__id, str):
                raise JsonSchemaValueException('type', value=data__id, name='' + (name_prefix or 'data') + '.id', definition={'type': 'string'}, rule='type')
            if isinstance(data__id, str):
                data__id_len = len(data__id)
                if data__id_len > 80:
                    raise JsonSchemaValueException('maxLength', value=data__id, name='' + (name_prefix or 'data') + '.id', definition={'maxLength': 80}, rule='maxLength')
        if 'op' in data_keys:
            data_keys.remove('op')
            data__op = data['op']
            if not isinstance(data__op, str):
                raise JsonSchemaValueException('type', value=data__op, name='' + (name_prefix or 'data') + '.op', definition={'type': 'string'}, rule='type')
            if isinstance(data__op, str):
                data__op_len = len(data__op)
                if data__op_len > 40:
                    raise JsonSchemaValueException('maxLength', value=data__op, name='' + (name_prefix or 'data') + '.op', definition={'maxLength': 40}, rule='maxLength')
        if 'body' in data_keys:
            data_keys.remove('body')
            data__body = data['body']
            if not isinstance(data__body, dict):
                raise JsonSchemaValueException('type', value=data__body, name='' + (name_prefix or 'data') + '.body', definition={'type': 'object'}, rule='type')
        if data_keys:
            raise JsonSchemaValueException('' + (name_prefix or 'data') + ' must not contain ' + str(data_keys) + ' properties', value=data, name='' + (name_prefix or 'data') + '', definition={'additionalProperties': False}, rule='additionalProperties')
    return data

VALIDATORS = {
    "request": validate___definitions_request,
    "advise_mishap_body": validate___definitions_advise_mishap_body,
    "assess_sump_body": validate___definitions_assess_sump_body,
    "calibrate_sump_body": validate___definitions_calibrate_sump_body,
    "deal_practice_body": validate___definitions_deal_practice_body,
    "describe_body": validate___definitions_describe_body,
    "draw_sheet_body": validate___definitions_draw_sheet_body,
    "due_checks_body": validate___definitions_due_checks_body,
    "fit_factor_body": validate___definitions_fit_factor_body,
    "fold_log_body": validate___definitions_fold_log_body,
    "handover_body": validate___definitions_handover_body,
    "hold_check_body": validate___definitions_hold_check_body,
    "judge_look_body": validate___definitions_judge_look_body,
    "judge_practice_body": validate___definitions_judge_practice_body,
    "look_back_body": validate___definitions_look_back_body,
    "make_code_body": validate___definitions_make_code_body,
    "merge_logs_body": validate___definitions_merge_logs_body,
    "plan_charge_body": validate___definitions_plan_charge_body,
    "plan_check_body": validate___definitions_plan_check_body,
    "plan_holding_body": validate___definitions_plan_holding_body,
    "plan_recipe_body": validate___definitions_plan_recipe_body,
    "read_code_body": validate___definitions_read_code_body,
    "read_export_body": validate___definitions_read_export_body,
    "read_fluid_body": validate___definitions_read_fluid_body,
    "read_machine_body": validate___definitions_read_machine_body,
    "read_quantity_body": validate___definitions_read_quantity_body,
    "read_water_body": validate___definitions_read_water_body,
    "recheck_body": validate___definitions_recheck_body,
    "trend_body": validate___definitions_trend_body,
    "try_sump_body": validate___definitions_try_sump_body,
    "write_csv_body": validate___definitions_write_csv_body,
    "write_export_body": validate___definitions_write_export_body,
    "additive_content": validate___definitions_additive_content,
    "calibration_content": validate___definitions_calibration_content,
    "check_content": validate___definitions_check_content,
    "clean_out_content": validate___definitions_clean_out_content,
    "correction_content": validate___definitions_correction_content,
    "decision_content": validate___definitions_decision_content,
    "fluid_set_content": validate___definitions_fluid_set_content,
    "instrument_set_content": validate___definitions_instrument_set_content,
    "latest_entry": validate___definitions_latest_entry,
    "log_entry": validate___definitions_log_entry,
    "machine_set_content": validate___definitions_machine_set_content,
    "machine_state_content": validate___definitions_machine_state_content,
    "note_content": validate___definitions_note_content,
    "plan_content": validate___definitions_plan_content,
    "pour_content": validate___definitions_pour_content,
    "recheck_content": validate___definitions_recheck_content,
    "shop_set_content": validate___definitions_shop_set_content,
    "unknown_addition_content": validate___definitions_unknown_addition_content,
    "withdrawal_content": validate___definitions_withdrawal_content,
}
