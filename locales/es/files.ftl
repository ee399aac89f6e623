# Files between devices and the database: what happened, what is safe, what to do.
# The codes stand in crates/exchange (error.rs) and crates/store (error.rs, take_in, check.rs).

## A file could not be read

file-error-empty = En este archivo no hay nada. No se cambió nada; pide que te lo envíen de nuevo.
file-error-cut-short = Este archivo se corta antes de su final: una parte se perdió por el camino. No se cambió nada; pide que te lo envíen de nuevo.
file-error-altered = Este archivo no está como se escribió: algo lo cambió por el camino. Aquí no se cambió nada; pide que te lo envíen de nuevo tal cual.
file-error-not-newel = Este no es un archivo de Newel. No se cambió nada; elige un archivo de plan o de registro.
file-error-too-new = Este archivo lo creó una versión más nueva de Newel. No se cambió nada y el archivo está bien; actualiza Newel e impórtalo entonces.
file-error-sealed = Este archivo está sellado de un modo que esta versión no puede abrir. No se cambió nada y el archivo está bien; actualiza Newel e impórtalo entonces.
file-error-too-large = Este archivo es más grande de lo que debería ser cualquier archivo de Newel. No se cambió nada; comprueba que sea el correcto.
file-error-too-deep = Este archivo está construido como ningún archivo de Newel. No se cambió nada; comprueba que sea el correcto.
file-error-wrong-kind = { $found ->
    [plan] Este es un archivo de plan y aquí hace falta un archivo de registro. No se cambió nada; elige el archivo de registro.
   *[log] Este es un archivo de registro y aquí hace falta un archivo de plan. No se cambió nada; elige el archivo de plan.
}
file-error-malformed = Este archivo está completo, pero Newel no lo entiende. No se cambió nada; pide que lo creen de nuevo con la versión más nueva.
file-error-record-refused = Una entrada de este archivo no debería estar en él, así que no se importó nada. No se cambió nada; pide que lo creen de nuevo.
file-error-unreadable = No se pudo abrir este archivo. No se cambió nada; comprueba que siga ahí y que tengas permiso para leerlo.

## A file could not be written

file-error-unwritten = No se pudo crear el archivo ahí. Tu registro está a salvo; elige otro lugar.
file-error-too-large-to-write = El archivo sería demasiado grande para importarlo. Tu registro está a salvo; envía solo lo nuevo desde la última vez.
file-error-record-unwritable = Hay una entrada que no se puede pasar a un archivo. Tu registro está a salvo; ejecuta la comprobación del registro.
file-error-unwritable = Esto no se puede pasar a un archivo. Tu registro está a salvo; ejecuta la comprobación del registro.

## An entry of a file was left out; the rest was taken in

take-in-refused-not-a-record = No es una entrada que esta versión pueda leer.
take-in-refused-another-person = Es de otra persona.
take-in-refused-two-contents = La misma entrada ya está, con otro contenido. Lo que hay en el registro se queda como está.
take-in-refused-place-taken = Otra entrada ocupa su lugar. Lo que hay en el registro se queda como está.
take-in-refused-broken-chain = No continúa lo que hay en el registro.
take-in-refused-altered = Esta entrada, o la contigua, se alteró después de escribirse. Llegará con un archivo nuevo.

## The database

store-error-io = No se pudo acceder al registro en el disco. Lo guardado está a salvo; revisa el disco e inténtalo de nuevo.
store-error-too-new = Este registro lo escribió una versión más nueva de Newel. Está a salvo y no se tocó; actualiza Newel.
store-error-foreign = Este archivo no es un registro de Newel. No se tocó; elige otro.
store-error-corrupt = El registro está dañado. Se dejó como está; restaura la última copia de seguridad o importa los archivos que se enviaron.
store-error-busy = Otro programa está usando el registro. No se ha perdido nada; ciérralo e inténtalo de nuevo.
store-error-disk-full = No queda espacio en este dispositivo. Lo guardado está a salvo; libera espacio e inténtalo de nuevo.
store-error-read-only = El registro se puede leer, pero no escribir. Lo guardado está a salvo; comprueba que tengas permiso para escribir en su carpeta.
store-error-database = No se pudo usar el registro en este momento. Lo guardado está a salvo; inténtalo de nuevo.
store-error-record-unreadable = Hay una entrada del registro que no se puede leer. Las demás están a salvo; ejecuta la comprobación del registro.
store-error-unwritable = Esto no se puede guardar tal como está. No se cambió nada; revisa los números que escribiste.
store-error-no-such-record = Lo que aquí se indica ya no está en el registro. No se cambió nada; abre la pantalla de nuevo.
store-error-plan-stale = El registro ha cambiado desde que se leyó el archivo. No se cambió nada; importa el archivo de nuevo.
store-error-miscount = Al importar el archivo, las cuentas no cuadraron, así que no se guardó nada de él. No se cambió nada; inténtalo de nuevo.

## What the check of a log found

check-damage = El archivo está dañado: { $what }.
check-dangling = Una entrada remite a otra que no está.
check-unreadable = Una entrada no se puede leer.
check-altered = Una entrada no está como se escribió.
check-broken-chain = Una entrada no continúa la anterior.
check-gap = Las entradas { $from } a { $to } aún no han llegado.
check-projection = Un resumen no coincide con el registro. Puede volver a hacerse a partir de él.

## What a revision changes (crates/engine/src/revision.rs). Levels are counted from 1; zero stands for all, for no end, for a free tempo.

change-another-programme = Otro programa: «{ $to }» en lugar de «{ $from }»
change-title = El programa se llama «{ $to }», antes «{ $from }»
change-per-week = { $to } sesiones por semana, antes { $from }
change-weeks = { $to ->
    [0] Ya sin final, antes { $from } semanas
   *[other] { $from ->
        [0] Termina tras { $to } semanas, antes sin final
       *[other] { $to } semanas, antes { $from }
    }
}
change-light-weeks = Semanas ligeras: { $count ->
    [0] ninguna
   *[other] { $list }
}
change-phase-added = Fase nueva: { $phase }, { $weeks ->
    [one] 1 semana
   *[other] { $weeks } semanas
}
change-phase-removed = Fase quitada: { $phase }
change-phase-title = La fase «{ $from }» se llama «{ $to }»
change-phase-weeks = { $phase }: { $to ->
    [one] 1 semana
   *[other] { $to } semanas
}, { $from ->
    [one] antes 1
   *[other] antes { $from }
}
change-phase-light-weeks = { $phase }, semanas ligeras: { $count ->
    [0] ninguna
   *[other] { $list }
}
change-phases-order = Las fases van en otro orden
change-session-phase = { $session }: ahora en { $to }, antes en { $from }
change-session-added = Sesión nueva: { $session }
change-session-removed = Sesión quitada: { $session }
change-session-title = Sesión «{ $to }», antes «{ $from }»
change-session-minutes = { $session }: { $to ->
    [0] ya no se buscan minutos, eran { $from }
   *[other] se buscan { $to } minutos, { $from ->
        [0] antes ninguno
       *[other] antes { $from }
    }
}
change-sessions-order = Las sesiones van en otro orden
change-block-added = { $session }: bloque nuevo, { $form ->
    [superset] superserie
    [tri_set] triserie
    [giant_set] serie gigante
    [finisher] bloque final
    [warm_up] calentamiento
    [cool_down] vuelta a la calma
   *[straight_sets] series simples
}: { $more ->
    [0] { $ladder }
    [one] { $ladder } y otro más
   *[other] { $ladder } y { $more } más
}
change-block-removed = { $session }: bloque quitado, { $form ->
    [superset] superserie
    [tri_set] triserie
    [giant_set] serie gigante
    [finisher] bloque final
    [warm_up] calentamiento
    [cool_down] vuelta a la calma
   *[straight_sets] series simples
}: { $more ->
    [0] { $ladder }
    [one] { $ladder } y otro más
   *[other] { $ladder } y { $more } más
}
change-block-moved = { $session }: bloque que estaba en «{ $from }», { $form ->
    [superset] superserie
    [tri_set] triserie
    [giant_set] serie gigante
    [finisher] bloque final
    [warm_up] calentamiento
    [cool_down] vuelta a la calma
   *[straight_sets] series simples
}: { $more ->
    [0] { $ladder }
    [one] { $ladder } y otro más
   *[other] { $ladder } y { $more } más
}
change-block-form = { $session }, { $more ->
    [0] { $ladder }
    [one] { $ladder } y otro más
   *[other] { $ladder } y { $more } más
}: { $to ->
    [superset] superserie
    [tri_set] triserie
    [giant_set] serie gigante
    [finisher] bloque final
    [warm_up] calentamiento
    [cool_down] vuelta a la calma
   *[straight_sets] series simples
}, antes { $from ->
    [superset] superserie
    [tri_set] triserie
    [giant_set] serie gigante
    [finisher] bloque final
    [warm_up] calentamiento
    [cool_down] vuelta a la calma
   *[straight_sets] series simples
}
change-block-rounds = { $session }, { $more ->
    [0] { $ladder }
    [one] { $ladder } y otro más
   *[other] { $ladder } y { $more } más
}: { $to } rondas, antes { $from }
change-block-rest = { $session }, { $more ->
    [0] { $ladder }
    [one] { $ladder } y otro más
   *[other] { $ladder } y { $more } más
}: descanso de { $to } s, antes { $from } s
change-block-between = { $session }, { $more ->
    [0] { $ladder }
    [one] { $ladder } y otro más
   *[other] { $ladder } y { $more } más
}: { $to } s entre ejercicios, antes { $from } s
change-block-week = { $session }, { $more ->
    [0] { $ladder }
    [one] { $ladder } y otro más
   *[other] { $ladder } y { $more } más
}, semana { $week }: { $to ->
    [one] 1 ronda
   *[other] { $to } rondas
}, descanso { $rest_to } s; antes { $from ->
    [one] 1 ronda
   *[other] { $from } rondas
}, descanso { $rest_from } s
change-blocks-order = { $session }: los bloques van en otro orden
change-slot-added = { $session }: nuevo, { $ladder }, { $to_timed ->
    [1] { $to_low } – { $to_high } segundos
   *[0] { $to_low } – { $to_high } repeticiones
}
change-slot-removed = { $session }: quitado, { $ladder }
change-slot-moved = { $session }: { $ladder } pasa a otro bloque
change-slot-ladder = { $session }: { $ladder } en lugar de { $from }
change-slot-amount = { $session }, { $ladder }: { $to_timed ->
    [1] { $to_low } – { $to_high } segundos
   *[0] { $to_low } – { $to_high } repeticiones
}, antes { $from_timed ->
    [1] { $from_low } – { $from_high } segundos
   *[0] { $from_low } – { $from_high } repeticiones
}
change-slot-target = { $session }, { $ladder }: { $to } en reserva, antes { $from }
change-slot-tempo = { $session }, { $ladder }: tempo { $to_free ->
    [1] libre
   *[0] { $to_down }-{ $to_pause }-{ $to_up }
}, antes { $from_free ->
    [1] libre
   *[0] { $from_down }-{ $from_pause }-{ $from_up }
}
change-slot-levels = { $session }, { $ladder }: { $to_high ->
    [0] todos los peldaños
   *[other] peldaños { $to_low } – { $to_high }
}, antes { $from_high ->
    [0] todos los peldaños
   *[other] peldaños { $from_low } – { $from_high }
}
change-slot-week = { $session }, { $ladder }, semana { $week }: { $to_timed ->
    [1] { $to_low } – { $to_high } segundos
   *[0] { $to_low } – { $to_high } repeticiones, { $target } en reserva
}
change-slots-order = { $session }, { $more ->
    [0] { $ladder }
    [one] { $ladder } y otro más
   *[other] { $ladder } y { $more } más
}: los ejercicios van en otro orden

## The receipt beside plan files

day-in-full = { $day } de { $month ->
    [1] enero
    [2] febrero
    [3] marzo
    [4] abril
    [5] mayo
    [6] junio
    [7] julio
    [8] agosto
    [9] septiembre
    [10] octubre
    [11] noviembre
   *[12] diciembre
} de { $year }
receipt-title = Archivos de plan de { $coach }, { $day }, { $time }
receipt-written = { $count ->
    [0] No se escribió ningún archivo.
    [one] Se escribió un archivo:
   *[other] Se escribieron { $count } archivos:
}
receipt-file = { $name }: { $file }
receipt-programme = «{ $title }», su archivo número { $number }
receipt-begins = Empieza el { $day }
receipt-entries = { $count ->
    [0] No lleva ninguna entrada tuya.
    [one] Lleva una entrada tuya, { $fresh } nueva.
   *[other] Lleva { $count } entradas tuyas, { $fresh } nuevas.
}
receipt-first = Es su primer plan.
receipt-same = El programa es el de su último archivo.
receipt-changes = Cambia desde su último archivo:
receipt-left-out = { $count ->
    [one] Sin archivo:
   *[other] { $count } sin archivo:
}
receipt-care = Los archivos contienen datos de salud. Entrega cada uno solo a su destinataria, por un medio en el que ambas confiéis. Nada se envió por sí solo.
left-out-no-programme = no tiene programa asignado.
left-out-unfinished = su programa está a medio escribir.
left-out-up-to-date = no hay nada nuevo desde su último archivo.
left-out-archived = está archivada.
