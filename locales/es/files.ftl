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
